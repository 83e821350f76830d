/**
 * Signs that a terminal, a log or a page would obey or hide instead of showing: control characters, line ends, and those that
 * turn the direction of text (Unicode Standard Annex 9), as well as line separators and the byte order mark.
 */
const signs = (controls: string) =>
  new RegExp(`[${controls}\\x7F-\\x9F\\u061C\\u200E\\u200F\\u2028-\\u202E\\u2066-\\u2069\\uFEFF]|\\p{Cs}`, 'gu')
const unseen = signs('\\0-\\x08\\n-\\x1F')
const unseenInLines = signs('\\0-\\x08\\v-\\x1F')

/** Text of a stranger in one line: what would not be seen is spelt out, as in `\u001b[2J`. A tab stays. */
export const visible = (text: string): string => text.replace(unseen, spelt)

/** The same of several lines, which stay lines. */
export const visibleLines = (text: string): string => text.replace(unseenInLines, spelt)

function spelt(sign: string): string {
  return `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`
}
