import { element, type Attributes, type Markup } from './element.ts'
import type { Bundle } from '../../wording/bundle.ts'

/** Whether parts of a picture lead to their fields: in an editor they do, on paper they do not. */
export interface Drawing {
  readonly links: boolean
  /** The language of its words. */
  readonly bundle?: Bundle | undefined
}

/** A part of a picture that stands for a field: a button with a name where it leads there. The name holds the words in the part. */
export function fieldGroup(drawing: Drawing, pointer: string, label: string, ...parts: readonly Markup[]): Markup {
  // a space between texts, or their words would run together for whoever hears them
  return element('g', linkTo(drawing, pointer, label), ...parts.flatMap((part) => [part, space]))
}

const space = ' ' as Markup

export function linkTo({ links }: Drawing, pointer: string, label: string): Attributes {
  return links ? { 'data-field': pointer, role: 'button', tabindex: 0, 'aria-label': label } : {}
}
