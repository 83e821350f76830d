import { tell, type Told } from '../../wording/told.ts'
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
        ? tell`looks for a value of that name`
        : rest
          ? tell`reads ${rest} alone`
          : tell`finds nothing after it`
    return tell`YAML takes ${word} for ${names[text[0]!]} and ${left}. Write ${better ?? tell`the text in quotes`}.`
  },
  better: (text) => {
    const number = numberBehind(/^[&*!]+\s*/, text)
    return number ? { text: number, why: tell`without the ${text[0]}`, certainty: 'guess' } : null
  },
})

const names: Readonly<Record<string, Told>> = { '&': tell`an anchor`, '*': tell`an alias`, '!': tell`a type` }
