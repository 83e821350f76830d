import { textHazard } from './plain-text.ts'
import { yamlSource } from './hazard.ts'

export const colonInText = textHazard({
  id: 'colon-cuts-text',
  severity: 'error',
  reason:
    'A colon with a space behind it makes a field of what stands before it, and a value cannot hold one on its own line.',
  source: yamlSource('7.3.3'),
  damaged: /^(?!["'&*!>|]|-\s).*?:(?:\s|$)/,
  message: (text) => `The colon in ${text} makes a second field on the same line. Put the text in quotes.`,
  better: () => null,
})
