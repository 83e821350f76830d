import { phrase } from '../../wording/phrase.ts'
import { textHazard } from './plain-text.ts'
import { yamlSource } from './hazard.ts'

export const textBehindQuote = textHazard({
  id: 'text-behind-quote',
  severity: 'error',
  reason: 'A quoted text ends with its closing quote; YAML leaves out what follows.',
  source: yamlSource('7.3.1'),
  damaged: /^(["']).*?\1\s*[^\s]/,
  message: (text, better) =>
    phrase`YAML reads ${/^(["']).*?\1/.exec(text)![0]} and cannot read what follows the closing quote. Write ${better?.replace(/[.]$/, '') ?? phrase`all of it in quotes`}.`,
  better: (text) => {
    // an apostrophe closes a quote, too
    const bare = /^'[^']*\w'\w/.test(text) ? text.slice(1).replace(/'$/, '') : text.replace(/^(["'])(.*?)\1/, '$2')
    return /^[^\s"'#:,[\]{}&*!|>%@`-](?:[^"'#:,[\]{}]|(?<=\w)'(?=\w))*$/.test(bare)
      ? { text: bare, why: phrase`without quotes`, certainty: 'same' }
      : null
  },
})
