/**
 * Texts of another language, in the format of @vscode/l10n: by the English text, or by its name where the same English needs
 * other words in that place. What it lacks is said in English.
 */
export type Bundle = Readonly<Record<string, string>>

/** What the bundles hold, beside the English that the sources are written in. */
export const languages = ['en', 'de', 'es'] as const
export type Language = (typeof languages)[number]

/** The language of a locale such as `de-AT`; English where it is none of ours. */
export function languageOf(locale: unknown): Language {
  const [first] = typeof locale === 'string' ? locale.toLowerCase().split(/[-_.]/) : []
  return languages.find((one) => one === first) ?? 'en'
}

/** A whole text in another language. */
export const translated = (text: string, bundle: Bundle | undefined): string => bundle?.[text] ?? text
