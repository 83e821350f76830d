import { phrase, type Phrase } from '../../wording/phrase.ts'
import { numberBehind, textHazard } from './plain-text.ts'
import { yamlSource } from './hazard.ts'

export const anchorSign = textHazard({
  id: 'sign-eats-number',
  severity: 'error',
  reason:
    'A value that begins with &, * or ! is an anchor, an alias or a type to YAML, which takes the first word away; records use none of them.',
  source: yamlSource('6.9 and 7.1'),
  damaged: /^[&*!]/,
  message: (text, better) => {
    const word = /^\S*/.exec(text)![0]
    const rest = text.slice(word.length).trim()
    const left =
      text[0] === '*'
        ? phrase`looks for a value of that name`
        : rest
          ? phrase`reads ${rest} alone`
          : phrase`finds nothing after it`
    return phrase`YAML takes ${word} for ${names[text[0]!]} and ${left}. Write ${better ?? phrase`the text in quotes`}.`
  },
  better: (text) => {
    const number = numberBehind(/^[&*!]+\s*/, text)
    return number ? { text: number, why: phrase`without the ${text[0]}`, certainty: 'guess' } : null
  },
})

const names: Readonly<Record<string, Phrase>> = { '&': phrase`an anchor`, '*': phrase`an alias`, '!': phrase`a type` }
