import { textHazard } from './plain-text.ts'
import { yamlSource } from './hazard.ts'

export const textBehindQuote = textHazard({
  id: 'text-behind-quote',
  severity: 'error',
  reason: 'A quoted text ends with its closing quote; YAML leaves out what follows.',
  source: yamlSource('7.3.1'),
  damaged: /^(["']).*?\1\s*[^\s]/,
  message: (text, better) =>
    `YAML reads ${/^(["']).*?\1/.exec(text)![0]} and stumbles over what stands behind the closing quote. Write ${better ?? 'all of it in quotes'}.`,
  better: (text) => {
    const bare = text.replace(/^(["'])(.*?)\1/, '$2')
    return /^[^\s"'#:,[\]{}&*!|>%@`-][^"'#:,[\]{}]*$/.test(bare)
      ? { text: bare, why: 'without quotes', certainty: 'same' }
      : null
  },
})
