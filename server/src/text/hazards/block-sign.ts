import { phrase } from '../../wording/phrase.ts'
import { numberBehind, textHazard } from './plain-text.ts'
import { yamlSource } from './hazard.ts'

export const blockSign = textHazard({
  id: 'sign-begins-block',
  severity: 'error',
  reason:
    'A value that begins with > or | announces a text of several lines below it, so what is on the line itself is lost.',
  source: yamlSource('8.1'),
  damaged: /^[>|]/,
  message: (text, better) =>
    better
      ? phrase`YAML takes the ${text[0]} in ${text} for the beginning of a text of several lines. Write ${better}, or put it in quotes.`
      : phrase`YAML takes the ${text[0]} in ${text} for the beginning of a text of several lines. Put it in quotes.`,
  better: (text) => {
    const number = numberBehind(/^[>|]=?\s*/, text)
    return number ? { text: number, why: phrase`the number alone`, certainty: 'guess' } : null
  },
})
