import { spelt, unseen, visible } from '../text/visible.ts'

export { visible } from '../text/visible.ts'

/** A whole page of ours: each line made visible, but lines are lines, and the escapes for our own colours stay where they are wanted. */
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
