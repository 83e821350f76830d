import { visibleLines } from '../text/visible.ts'

export { visible } from '../text/visible.ts'

/** Which escapes of ours a page may hold; links only beside colours. */
export interface Escapes {
  readonly colour: boolean
  readonly links: boolean
}

export const noEscapes: Escapes = { colour: false, links: false }

/** A whole page of ours: each line made visible, but lines are lines, and the escapes of ours stay where they are wanted. */
export function printable(page: string, { colour, links }: Escapes): string {
  if (!colour) return visibleLines(page)
  const ours = links ? /(\x1B\[\d+m|\x1B\]8;;(?:file:[!-~]*)?\x1B\\)/ : /(\x1B\[\d+m)/
  return page
    .split(ours)
    .map((piece, i) => (i % 2 === 1 ? piece : visibleLines(piece)))
    .join('')
}

/** A text that leads to an address, in a terminal that shows links (OSC 8). */
export const linked = (text: string, address: string): string => `\u001b]8;;${address}\u001b\\${text}\u001b]8;;\u001b\\`

/** JSON whose text means the same, with nothing unseen left as it is. */
export const jsonText = (document: unknown): string => `${visibleLines(JSON.stringify(document, null, 2))}\n`
