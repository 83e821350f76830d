import { editDistance } from '../quantities/edit-distance.ts'
import { boxOf, around, type Piece } from './page.ts'
import type { Reading } from './sheet.ts'

const standard = /\b(IEC|UL|EN|ISO|VDE|IEEE|GB|JIS)(?:[\s/-]*(?:EN|IEC))?[\s:-]*(\d{3,6}(?:-\d+)*)(?!\d)/giu

/** Standards that a sheet names: `IEC 61215 · IEC 61730`, once each. */
export function certificatesIn(pages: readonly (readonly Piece[])[]): readonly Reading[] {
  const made = new Map<string, Reading>()
  for (const piece of pages.flat())
    for (const [text, body, number] of piece.text.matchAll(standard)) {
      const typed = `${body!.toUpperCase()} ${number}`
      const { page } = piece
      const label = piece.text
      if (!made.has(typed))
        made.set(typed, {
          field: `/certificates/${made.size}`,
          typed,
          also: [],
          text,
          label,
          page,
          box: around([boxOf(piece)]),
        })
    }
  return [...made.values()]
}

/**
 * The standard of a sheet that a typed certificate is: the same one, or the only one that nobody typed and that differs
 * in one digit or in the order of two.
 */
export function certificateFor(
  typed: string,
  all: readonly string[],
  readings: readonly Reading[],
): { readonly reading: Reading; readonly isSame: boolean } | null {
  const own = nameOf(typed)
  const same = readings.find((reading) => nameOf(reading.typed) === own)
  if (same) return { reading: same, isSame: true }
  const others = all.map(nameOf)
  const near = readings.filter((r) => !others.includes(nameOf(r.typed)) && editDistance(nameOf(r.typed), own) === 1)
  return own && near.length === 1 ? { reading: near[0]!, isSame: false } : null
}

const nameOf = (text: string): string => {
  const [, body, number] = new RegExp(standard.source, 'iu').exec(text) ?? []
  // a part is a certificate of its standard: IEC 61730-1
  return body ? `${body.toUpperCase()} ${number!.split('-')[0]}` : ''
}
