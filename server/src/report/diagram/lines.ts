import { label } from '../svg/dimension.ts'
import type { Markup } from '../svg/element.ts'

const lineHeight = 14

/** Lines of text below each other; `room` is about how many letters one may have. */
export function lines(
  x: number,
  y: number,
  texts: readonly (string | null)[],
  room = 18,
  anchor: 'start' | 'middle' | 'end' = 'start',
): readonly Markup[] {
  return texts
    .flatMap((text) => (text === null || text === '' ? [] : wrapped(text, room)))
    .map((text, i) => label(x, y + lineHeight * i, text, anchor))
}

function wrapped(text: string, room: number): readonly string[] {
  const made: string[] = []
  for (const word of text.split(' ')) {
    const last = made.at(-1)
    if (last !== undefined && last.length + 1 + word.length <= room) made[made.length - 1] = `${last} ${word}`
    else made.push(word.length > room ? `${word.slice(0, room - 1)}…` : word)
  }
  return made.length > 3 ? [...made.slice(0, 2), `${made[2]!.slice(0, room - 1)}…`] : made
}
