import { phrase, type Phrase } from '../wording/phrase.ts'

/**
 * The encoding of a text that was read as UTF-8 and is not: null where nothing says so. Field names are ASCII, so every
 * second unit of UTF-16 is a zero, and three of four of UTF-32.
 */
export function foreignEncoding(text: string): string | null {
  if (!text.includes('\0')) return null
  const head = [...text.slice(0, 200)]
  const zeros = head.flatMap((sign, i) => (sign === '\0' ? [i] : []))
  if (zeros.length < 0.3 * head.length || zeros.length === 0) return null
  if (zeros.length > 0.6 * head.length) return 'UTF-32'
  return zeros.filter((i) => i % 2 === 0).length < zeros.length / 2 ? 'UTF-16' : 'UTF-16 (big-endian)'
}

const signatures: readonly (readonly [RegExp, Phrase])[] = [
  [/^%PDF-/, phrase`a PDF`],
  [/^(?:PK\x03\x04|\x1F[\x8B\uFFFD]|7z|Rar!)/, phrase`an archive or an office document`],
  [/^\{\\rtf/, phrase`a document of a word processor`],
  [/^\s*<(?:!DOCTYPE|html|\?xml|svg)\b/i, phrase`a web page`],
  [/^(?:\uFFFDPNG|\uFFFD{4}\0|GIF8)/, phrase`a picture`],
]

/** What a file is that was given the name of a record; null for a text. */
export function notText(text: string): Phrase | null {
  const known = signatures.find(([signature]) => signature.test(text))
  if (known) return known[1]
  const head = text.slice(0, 2000)
  return (head.match(controls)?.length ?? 0) > 0.05 * head.length && !foreignEncoding(text)
    ? phrase`something other than text`
    : null
}

const controls = /[\x00-\x08\x0E-\x1F]/g
