import { CsvError, parse, type Options } from 'csv-parse/sync'
import { unguarded } from './guard.ts'
import { named, phrase, type Phrase } from '../wording/phrase.ts'

/** A table as a spreadsheet saves it. */
export interface Rows {
  readonly headings: readonly string[]
  /** Whether numbers have a decimal comma: where columns are parted by something else, spreadsheets write one. */
  readonly hasDecimalCommas: boolean
  readonly rows: readonly Row[]
}

export interface Row {
  /** Of the file, counted from 1; a row of several lines ends there. */
  readonly line: number
  readonly cells: readonly string[]
}

/**
 * Reads comma-separated values (RFC 4180), or those that semicolons or tabs part. Rows without any text are left out.
 *
 * @returns  the rows, or what is wrong with the file, with its line
 */
export function readRows(text: string): Rows | { readonly problem: Phrase; readonly line: number } {
  if (text.includes('\ufffd'))
    return { problem: phrase`it is not UTF-8; save it as CSV with UTF-8`, line: lineOf(text, text.indexOf('\ufffd')) }
  try {
    const delimiter = delimiterOf(text)
    const [first, ...rows] = parsed(text, { delimiter, bom: true, relax_column_count: true, trim: true })
    if (!first) return { problem: phrase`it is empty`, line: 1 }
    const headings = first.cells.map(unguarded)
    const tooLong = rows.find(({ cells }) => cells.slice(headings.length).some((cell) => cell !== ''))
    if (tooLong)
      return {
        problem: phrase`this row has ${tooLong.cells.length} cells and the heading ${headings.length}`,
        line: tooLong.line,
      }
    return {
      headings,
      hasDecimalCommas: delimiter !== ',',
      rows: rows
        .filter(({ cells }) => cells.some((cell) => cell !== ''))
        .map(({ line, cells }) => ({ line, cells: headings.map((_, i) => unguarded(cells[i] ?? '')) })),
    }
  } catch (error) {
    if (!(error instanceof CsvError)) throw error
    return { problem: quoted[error.code] ?? named(error.message), line: Number(error.lines ?? 1) }
  }
}

/** What can be wrong with the quotation marks of a table, by the codes of the library. */
const quoted: Readonly<Record<string, Phrase>> = {
  CSV_QUOTE_NOT_CLOSED: phrase`a quotation mark opens a cell here, and none closes it`,
  CSV_INVALID_CLOSING_QUOTE: phrase`text follows the quotation mark that closes a cell`,
  INVALID_OPENING_QUOTE: phrase`a quotation mark inside a cell: put the cell in quotation marks, and write this one twice`,
}

/** The one of comma, semicolon and tab that parts the headings into most columns. */
function delimiterOf(text: string): string {
  const columns = (delimiter: string) =>
    parsed(text, { delimiter, bom: true, relax_quotes: true, to: 1 })[0]?.cells.length ?? 0
  return [',', ';', '\t'].reduce((best, one) => (columns(one) > columns(best) ? one : best))
}

function parsed(text: string, options: Options): readonly Row[] {
  const rows: unknown = parse(text, { ...options, info: true, skip_empty_lines: true })
  return (rows as readonly WithInfo[]).map(({ record, info }) => ({ cells: record, line: info.lines }))
}

/** What the library returns with `info`; its types leave that open. */
interface WithInfo {
  readonly record: readonly string[]
  readonly info: { readonly lines: number }
}

const lineOf = (text: string, offset: number) => text.slice(0, offset).split('\n').length
