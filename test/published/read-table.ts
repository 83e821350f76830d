import { readFileSync } from 'node:fs'

/** Rows of a comma-separated table of `data/`, by column; an empty cell is an empty text. */
export function readTable(name: string): Record<string, string>[] {
  const [head, ...lines] = readFileSync(`test/published/data/${name}`, 'utf8').trim().split('\n')
  const columns = head!.split(',')
  return lines.map((line) => {
    const cells = line.split(',')
    return Object.fromEntries(columns.map((column, k) => [column, cells[k] ?? '']))
  })
}

/** A cell as a number, NaN where it is empty. */
export const number = (text: string | undefined) => (text ? Number(text) : NaN)

/** The value below which a share of a list lies. */
export function percentile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted[Math.round(share * (sorted.length - 1))]!
}
