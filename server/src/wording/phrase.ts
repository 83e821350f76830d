import { translated, type Bundle } from './bundle.ts'

/** What goes into a placeholder; nothing for undefined. */
type Part = string | number | Phrase | undefined

/**
 * A sentence, or a part of one, as data: its English template with numbered placeholders, and what goes into them. As in a
 * bundle of @vscode/l10n the template is the key under which another language has its own.
 */
export interface Phrase {
  readonly template: string
  readonly values: readonly Part[]
}

/** Writes a sentence as data: phrase`${key} has no value.` */
export const phrase = (parts: TemplateStringsArray, ...values: readonly Part[]): Phrase => ({
  template: parts.reduce((text, part, i) => `${text}{${i - 1}}${part}`),
  values,
})

/** Marks a text for the bundles where it is written down; it is `translated` where it is shown. */
export const inCatalogue = ([text]: TemplateStringsArray): string => text!

/** A name or another text that says no more than itself. */
export const named = (text: string): Phrase => ({ template: text, values: [] })

/** Parts of a sentence in a row. */
export const inARow = (parts: readonly Part[], between: string): Phrase => ({
  template: parts.map((_, i) => `{${i}}`).join(between),
  values: parts,
})

/** Parts as a sentence lists them: May, June and July. */
export const joined = (parts: readonly Part[]): Phrase =>
  parts.length < 2 ? inARow(parts, '') : phrase`${inARow(parts.slice(0, -1), ', ')} and ${parts.at(-1)}`

/** The sentence in words: in English, or as a bundle by templates has it. */
export const phraseInWords = ({ template, values }: Phrase, bundle?: Bundle): string =>
  translated(template, bundle).replace(/\{(\d+)\}/g, (typed, i: string) => {
    if (Number(i) >= values.length) return typed
    const value = values[Number(i)]
    return typeof value === 'object' ? phraseInWords(value, bundle) : String(value ?? '')
  })

/** Says a sentence at once: sayIn(bundle)`Write as ${text}`. */
export const sayIn =
  (bundle: Bundle | undefined) =>
  (parts: TemplateStringsArray, ...values: readonly Part[]): string =>
    phraseInWords(phrase(parts, ...values), bundle)
