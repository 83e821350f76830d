import type { Edit } from './span.ts'

/** Blanks that YAML takes for letters, and characters that nobody sees: both come with text from a PDF. */
const left = /[\u00A0\u2002-\u200A\u202F\u3000]|[\u00AD\u200B-\u200D\u2060]|(?!^)\uFEFF/g

/** What cleans a text of them: a plain blank, or nothing. */
export function pasted(text: string): readonly Edit[] {
  return Array.from(text.matchAll(left), ({ index, 0: sign }) => ({
    span: { start: index, end: index + 1 },
    text: isBlank(sign) ? ' ' : '',
  }))
}

/** Whether a person sees it, as a space. */
export const isBlank = (sign: string) => /\s/.test(sign) && sign !== '\uFEFF'
