/** An EPW file of hourly weather taken apart: the cells of its header and of its lines, one an hour. */
export interface EpwLines {
  /** Cells of the LOCATION line: latitude, longitude and time zone are 6 to 8. */
  readonly location: readonly string[]
  /** The last line of the header, DATA PERIODS, whose cell 2 is the lines an hour; null where there is none. */
  readonly periods: { readonly line: number; readonly cells: readonly string[] } | null
  readonly hours: readonly { readonly line: number; readonly cells: readonly string[] }[]
  /** Lines of the whole file. */
  readonly count: number
}

/** The columns that are read, counted from 0: when the hour is, its air temperature [°C], and its radiation [Wh/m2]. */
export const epwColumns = { year: 0, month: 1, day: 2, air: 6, global: 13, normal: 14, diffuse: 15 } as const

/** Lines of the header, where it does not say itself where it ends. */
const usualHeader = 8

/**
 * @param text  the whole file
 * @returns     its cells, with line numbers from 0; null where the first line does not begin with LOCATION
 * @source EnergyPlus Auxiliary Programs, "EnergyPlus Weather File (EPW) Data Dictionary", US Department of Energy, v24.1
 */
export function epwLines(text: string): EpwLines | null {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/)
  const location = cellsOf(lines[0] ?? '')
  if (location[0]?.trim().toUpperCase() !== 'LOCATION') return null
  const last = lines.findIndex((line) => /^\s*DATA PERIODS\s*,/i.test(line))
  const first = last < 0 ? usualHeader : last + 1
  return {
    location,
    periods: last < 0 ? null : { line: last, cells: cellsOf(lines[last]!) },
    hours: lines.flatMap((line, i) => (i < first || line.trim() === '' ? [] : [{ line: i, cells: cellsOf(line) }])),
    count: lines.length,
  }
}

/** NaN for a blank cell, which `Number` would take for 0. */
export const numberIn = (cell = ''): number => (cell.trim() === '' ? NaN : Number(cell))

const cellsOf = (line: string) => line.split(',')
