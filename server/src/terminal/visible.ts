/**
 * Signs that a terminal or a log would obey or hide instead of showing: control characters, line ends, and those that turn
 * the direction of text (Unicode Standard Annex 9), as well as line separators and the byte order mark.
 */
const unseen = /[\0-\x1F\x7F-\x9F\u061C\u200E\u200F\u2028-\u202E\u2066-\u2069\uFEFF]|\p{Cs}/gu

/** Text of a stranger in one line: what would not be seen is spelt out, as in `\u001b[2J`. A tab stays. */
export const visible = (text: string): string => text.replace(unseen, (sign) => (sign === '\t' ? sign : spelt(sign)))

/** A whole page of ours: as above, but lines are lines, and the escapes for our own colours stay where they are wanted. */
export function printable(page: string, colour: boolean): string {
  const ours = colour ? /(\n|\x1B\[\d+m)/ : /(\n)/
  return page
    .split(ours)
    .map((piece, i) => (i % 2 === 1 ? piece : visible(piece)))
    .join('')
}

/** JSON whose text means the same, with nothing unseen left as it is. */
export const jsonText = (document: unknown): string =>
  `${JSON.stringify(document, null, 2).replace(unseen, (sign) => (sign === '\n' ? sign : spelt(sign)))}\n`

const spelt = (sign: string) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`
