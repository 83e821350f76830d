import { phrase } from '../../wording/phrase.ts'
import { textHazard } from './plain-text.ts'
import { yamlSource } from './hazard.ts'

export const colonInText = textHazard({
  id: 'colon-cuts-text',
  severity: 'error',
  reason:
    'A colon with a space after it makes a field of what comes before it, and a value cannot have one on its own line.',
  source: yamlSource('7.3.3'),
  damaged: /^(?!["'&*!>|]|-\s).*?:(?:\s|$)/,
  message: (text) => phrase`The colon in ${text} makes a second field on the same line. Put the text in quotes.`,
  better: () => null,
})
