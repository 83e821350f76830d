import { foreignEncoding, notText } from './encoding.ts'
import type { Edit } from './span.ts'

/**
 * Blanks that YAML takes for letters, and characters that nobody sees: both come with text from a PDF, marks of the direction
 * of writing also from a messenger, and control characters from a disk that stopped in the middle of a file.
 */
const left =
  /[\u00A0\u2002-\u200A\u202F\u3000]|[\u00AD\u200B-\u200F\u202A-\u202E\u2060\u2066-\u2069\x00-\x08\x0B\x0C\x0E-\x1F\x7F]|(?!^)\uFEFF/g

/** Quotes that a word processor turned, around a whole name or value. */
const quotes =
  /(?<=(?:^|[:,[{\-\n]) {0,20})(?:[\u201C-\u201F\u00AB\u00BB]([^"\u201C-\u201F\u00AB\u00BB\n,{}[\]#]*)[\u201C-\u201F\u00AB\u00BB]|[\u2018-\u201B]([^'\u2018-\u201B\n,{}[\]#]*)[\u2018-\u201B])(?= {0,20}(?:[\r\n,}\]:]|$| #))/g

/** The wide colon of Asian keyboards behind a name. */
const wideColon = /(?<=(?:^|[,{\-\n]) {0,20}[A-Za-z_][\w-]{0,60})[\uFF1A\uFE55]/g

/** What cleans a text of them: a plain blank, a plain sign, or nothing. */
export function pasted(text: string): readonly Edit[] {
  const edits = Array.from(text.matchAll(left), ({ index, 0: sign }) => ({
    span: { start: index, end: index + 1 },
    text: isBlank(sign) ? ' ' : '',
  }))
  const isTurned = turned.test(text)
  if ((edits.length === 0 && !isTurned) || foreignEncoding(text) || notText(text)) return []
  return isTurned ? [...edits, ...plainSigns(text)].sort((a, b) => a.span.start - b.span.start) : edits
}

const turned = /[\u2018-\u201F\u00AB\u00BB\uFF1A\uFE55]/

function plainSigns(text: string): readonly Edit[] {
  const at = (start: number, sign: string): Edit => ({ span: { start, end: start + 1 }, text: sign })
  return [
    ...Array.from(text.matchAll(quotes), ({ index, 0: typed, 1: double }) => {
      const sign = double === undefined ? "'" : '"'
      return [at(index, sign), at(index + typed.length - 1, sign)]
    }).flat(),
    ...Array.from(text.matchAll(wideColon), ({ index }) => at(index, /^\S/.test(text.slice(index + 1)) ? ': ' : ':')),
  ]
}

/** Whether a person sees it, as a space. */
export const isBlank = (sign: string) => /\s/.test(sign) && !/[\uFEFF\v\f]/.test(sign)
