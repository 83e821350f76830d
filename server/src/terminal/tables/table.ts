import { visible } from '../visible.ts'

/** Columns padded to their widest cell, two spaces between them, nothing behind the last. */
export function table(cells: readonly (readonly string[])[]): string {
  const rows = cells.map((row) => row.map(visible))
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => length(row[column] ?? ''))))
  const lines = rows.map((row) =>
    row.map((cell, column) => cell + ' '.repeat((widths[column] ?? 0) - length(cell))).join('  '),
  )
  return lines.map((line) => `${line.trimEnd()}\n`).join('')
}

const length = (text: string) => [...text].length
