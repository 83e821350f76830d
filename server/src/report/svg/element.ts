import { visible } from '../../text/visible.ts'

export type Attributes = Readonly<Record<string, string | number | undefined>>

/** Markup that is complete and safe; only `element` and `escaped` make it. */
export type Markup = string & { readonly markup: unique symbol }

/** An element of SVG or HTML. Attributes that are undefined are left out; numbers are rounded to a hundredth. */
export function element(
  name: string,
  attributes: Attributes,
  ...children: readonly (Markup | readonly Markup[])[]
): Markup {
  const written = Object.entries(attributes).map(([key, value]) =>
    value === undefined ? '' : ` ${key}="${quoted(value)}"`,
  )
  const inside = children.flat().join('')
  const open = `<${name}${written.join('')}`
  return (inside === '' && !pairs.has(name) ? `${open}/>` : `${open}>${inside}</${name}>`) as Markup
}

/** HTML elements that have an end even where they are empty. */
const pairs = new Set(['td', 'th', 'div', 'p', 'span', 'text', 'ul', 'style', 'section'])

/** Text of anybody as markup: it stays text, and signs that would not be seen are spelt out. */
export const escaped = (text: string): Markup =>
  visible(text.replace(/\s+/g, ' ')).replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`) as Markup

const quoted = (value: string | number) => (typeof value === 'number' ? String(rounded(value)) : escaped(value))

const rounded = (value: number) => Math.round(value * 100) / 100
