import type { Units } from './usual-units.ts'

/**
 * Texts of another language, in the format of @vscode/l10n: by the English text, or by its name where the same English needs
 * other words in that place. What they lack is said in English.
 */
export type Texts = Readonly<Record<string, string>>

/** How something is said to people: in which language, and in which units. Nothing of it changes what is said to machines. */
export interface Bundle {
  readonly texts: Texts
  readonly units: Units
}

/** Undefined where nothing differs from how it is said in English and metric units. */
export const bundleOf = (texts: Texts | undefined, units: Units): Bundle | undefined =>
  texts || units !== 'metric' ? { texts: texts ?? {}, units } : undefined

export const unitsOf = (bundle: Bundle | undefined): Units => bundle?.units ?? 'metric'

/** What the bundles hold, beside the English that the sources are written in. */
export const languages = ['en', 'de', 'es'] as const
export type Language = (typeof languages)[number]

/** The language of a locale such as `de-AT`; English where it is none of ours. */
export function languageOf(locale: unknown): Language {
  const [first] = typeof locale === 'string' ? locale.toLowerCase().split(/[-_.]/) : []
  return languages.find((one) => one === first) ?? 'en'
}

/** A whole text in another language. */
export const translated = (text: string, bundle: Bundle | undefined): string => bundle?.texts[text] ?? text
