import type { Bundle } from '../../wording/bundle.ts'
import { phrase, phraseInWords, type Phrase } from '../../wording/phrase.ts'

type Make = (...found: string[]) => Phrase

/** What the library says of wrong arguments, as it begins, and what is said of it. */
const complaints: readonly (readonly [RegExp, Make])[] = [
  [/^missing required argument '(.*?)'/, (name) => phrase`missing required argument '${name}'`],
  [/^option '(.*?)' argument missing/, (flags) => phrase`option '${flags}' argument missing`],
  [/^unknown option '(.*?)'/, (flag) => phrase`unknown option '${flag}'`],
  [/^unknown command '(.*?)'/, (name) => phrase`unknown command '${name}'`],
  [
    /^option '(.*?)' cannot be used with option '(.*?)'/,
    (a, b) => phrase`option '${a}' cannot be used with option '${b}'`,
  ],
  [/^option '(.*?)' argument '(.*?)' is invalid\./, (a, b) => phrase`option '${a}' argument '${b}' is invalid.`],
  [
    /^command-argument value '(.*?)' is invalid for argument '(.*?)'\./,
    (value, name) => phrase`'${value}' is invalid for argument '${name}'.`,
  ],
  [
    /^too many arguments for '(.*?)'\. Expected (\d+) arguments? but got (\d+)\./,
    (name, expected, got) => phrase`too many arguments for '${name}': expected ${expected}, got ${got}.`,
  ],
]

/** What may follow. */
const hints: readonly (readonly [RegExp, Make])[] = [
  [/Allowed choices are (.*?)\.$/m, (list) => phrase`Allowed choices are ${list}.`],
  [/\(Did you mean one of (.*?)\?\)$/m, (list) => phrase`(Did you mean one of ${list}?)`],
  [/\(Did you mean (.*?)\?\)$/m, (one) => phrase`(Did you mean ${one}?)`],
]

/** A complaint of the library that reads the arguments, in the language that is asked for. */
export function complaint(text: string, bundle: Bundle | undefined): string {
  const plain = text.replace(/^error: /, '')
  return replaced(replaced(plain, complaints, bundle), hints, bundle)
}

function replaced(text: string, list: typeof complaints, bundle: Bundle | undefined): string {
  const [pattern, make] = list.find(([one]) => one.test(text)) ?? []
  if (!pattern || !make) return text
  return text.replace(pattern, (_, ...found: string[]) => phraseInWords(make(...found), bundle))
}
