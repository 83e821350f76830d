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
      text[0] === '*' ? 'looks for a value of that name' : rest ? `reads ${rest} alone` : 'finds nothing behind it'
    return `YAML takes ${word} for ${names[text[0]!]} and ${left}. Write ${better ?? 'the text in quotes'}.`
  },
  better: (text) => {
    const number = numberBehind(/^[&*!]+\s*/, text)
    return number ? { text: number, why: `without the ${text[0]}`, certainty: 'guess' } : null
  },
})

const names: Readonly<Record<string, string>> = { '&': 'an anchor', '*': 'an alias', '!': 'a type' }
