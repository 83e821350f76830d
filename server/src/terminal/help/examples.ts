import type { Bundle } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'

/** The end of a help text: commands to copy. */
export const examples = (bundle: Bundle | undefined, ...typed: readonly string[]): string =>
  [
    `\n${typed.length === 1 ? sayIn(bundle)`Example:` : sayIn(bundle)`Examples:`}`,
    ...typed.map((one) => `  wattproof ${one}`),
  ].join('\n')
