import { phrase } from '../../wording/phrase.ts'
import { numberBehind, textHazard } from './plain-text.ts'
import { yamlSource } from './hazard.ts'

export const minusApart = textHazard({
  id: 'minus-apart',
  severity: 'error',
  reason:
    'A minus with a space after it begins a list item in YAML, not a number; sheets copied from a PDF often have the space.',
  source: yamlSource('8.2.1'),
  damaged: /^-(?:\s|$)/,
  message: (text, better) =>
    better
      ? phrase`The minus and the number must touch: YAML reads ${text} as a list. Write ${better}.`
      : phrase`YAML reads ${text} as a list item. Leave the field out if the sheet gives no value, or put the text in quotes.`,
  better: (text) => {
    const number = numberBehind(/^-\s+/, text)
    return number ? { text: `-${number}`, why: phrase`the minus at its number`, certainty: 'same' } : null
  },
})
