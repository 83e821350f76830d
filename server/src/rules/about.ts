import { ruleOver } from '../findings/rule.ts'
import type { Field, Measure } from '../records/field.ts'
import type { Panel, Settings } from '../records/records.generated.ts'
import type { Site } from '../values/site.ts'

/** What a panel rule may know beside the record. */
export interface PanelAbout {
  readonly settings: Settings | undefined
  readonly site: Site
  /** The date, year-month-day. */
  readonly today: string
  /** Whether anything stands at a JSON pointer of the file, readable or not. */
  readonly typed: (pointer: string) => boolean
}

/** What a rule that compares a panel with others is given. */
export interface FamilyAbout {
  /** Other panels of the same family in the library. */
  readonly siblings: readonly Sibling[]
  /** Panels of the library that may be of its family: those that name the same, and those that share its coefficients. */
  readonly kin: readonly Sibling[]
}

export interface Sibling {
  readonly path: string
  readonly record: Kindred
}

/** A measure of another panel, by its number and the dimension of it. */
export interface Noted extends Field<number> {
  readonly quantity: Pick<Measure['quantity'], 'dimension'>
}

/** What rules look at in another panel; a record of its own has as much. */
export interface Kindred {
  readonly name?: Field<string> | undefined
  readonly maker?: Field<string> | undefined
  readonly family?: Field<string> | undefined
  readonly weight?: Noted | undefined
  readonly cells: { readonly technology?: Field<string> | undefined }
  readonly stc: NotedFields<'pmax' | 'vmp' | 'imp' | 'voc' | 'isc'>
  readonly temperature_coefficients: NotedFields<'pmax' | 'voc' | 'isc'>
  readonly noct: NotedFields<'temperature'>
  readonly size: NotedFields<'length' | 'width'>
}

type NotedFields<Key extends string> = { readonly [key in Key]?: Noted | undefined }

export const panelRule = ruleOver<Panel, PanelAbout>()
/** A rule that compares a panel with others; `check/panel.ts` lists them. */
export const familyRule = ruleOver<Kindred, FamilyAbout>()
