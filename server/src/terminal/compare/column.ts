import { CouldNotRun } from '../could-not-run.ts'

/** One cell: what machines and sorting take, and what people read. */
export interface Cell {
  /** Null where it is not known. */
  readonly value: number | string | null
  readonly text: string
  /** What the value is in where rows may differ: the currency of a price. */
  readonly unit?: string
}

export interface Column<Row> {
  /** The name on the command line and in CSV. */
  readonly key: string
  readonly label: string
  /** What is better: `more`, `less`, or neither, and then the alphabet sorts. */
  readonly better?: 'more' | 'less'
  readonly cell: (row: Row) => Cell
}

export const unknown: Cell = { value: null, text: 'not known' }

/** A number in the unit that people read it in; filters compare with that number. */
export const numberCell = (value: number | null, digits: number, unit = '', times = 1): Cell =>
  value === null
    ? unknown
    : { value: value * times, text: `${(value * times).toFixed(digits)}${unit === '' ? '' : ` ${unit}`}` }

export const textCell = (text: string | null, none = unknown): Cell => (text === null ? none : { value: text, text })

export function moneyCell(
  money: { readonly amount: number; readonly currency: string } | null,
  digits = 2,
  per = '',
): Cell {
  if (!money) return unknown
  const { amount, currency } = money
  return { value: amount, text: `${amount.toFixed(digits)} ${currency}${per}`, unit: currency }
}

/** The columns that a person names, in that order; the first of all leads where it is not among them. */
export function chosen<Row>(columns: readonly Column<Row>[], names: string | undefined): readonly Column<Row>[] {
  if (names === undefined) return columns
  const picked = names.split(',').map((name) => named(columns, name.trim()))
  return picked.includes(columns[0]!) ? picked : [columns[0]!, ...picked]
}

/** Best first; what is not known is last, and where nothing decides the order stays. */
export function sorted<Row>(rows: readonly Row[], columns: readonly Column<Row>[], name: string | undefined) {
  if (name === undefined) return rows
  const { cell, better } = named(columns, name)
  return [...rows].sort((a, b) => order(cell(a), cell(b), better))
}

function order(a: Cell, b: Cell, better: 'more' | 'less' | undefined): number {
  if (a.value === null || b.value === null) return Number(a.value === null) - Number(b.value === null)
  if (a.unit !== b.unit) return compare(a.unit ?? '', b.unit ?? '')
  return better === 'more' ? compare(b.value, a.value) : compare(a.value, b.value)
}

const compare = (a: number | string, b: number | string) => (a < b ? -1 : a > b ? 1 : 0)

/** The rows that every filter lets pass: `efficiency >= 20`, `surface = ETFE`. What is not known passes none. */
export function filtered<Row>(rows: readonly Row[], columns: readonly Column<Row>[], filters: readonly string[]) {
  const tests = filters.map((filter) => testOf(columns, filter))
  return rows.filter((row) => tests.every((test) => test(row)))
}

function testOf<Row>(columns: readonly Column<Row>[], filter: string): (row: Row) => boolean {
  const match = /^(\w+)\s*(<=|>=|<|>|=)(.+)$/.exec(filter.trim())
  if (!match) throw new CouldNotRun(`--filter "${filter}": write a column, one of < <= = >= >, and a value`)
  const [, name, sign, typed] = match as unknown as [string, string, string, string]
  const wanted = typed.trim()
  const { cell } = named(columns, name)
  // a unit behind the number is for the reader
  const number = Number(/^[-+]?\d*\.?\d+/.exec(wanted)?.[0] ?? NaN)
  return (row) => {
    const { value, unit } = cell(row)
    if (value === null) return false
    if (typeof value === 'string') {
      if (sign !== '=') throw new CouldNotRun(`--filter "${filter}": ${name} holds words; only = compares them`)
      return value.toLowerCase() === wanted.toLowerCase()
    }
    if (Number.isNaN(number)) throw new CouldNotRun(`--filter "${filter}": ${name} holds numbers`)
    const currency = /[A-Z]{3}/.exec(wanted)?.[0]
    if (unit !== undefined && currency !== undefined && unit !== currency) return false
    return holds[sign as keyof typeof holds](value, number)
  }
}

const holds = {
  '<': (a: number, b: number) => a < b,
  '<=': (a: number, b: number) => a <= b,
  '=': (a: number, b: number) => a === b,
  '>=': (a: number, b: number) => b <= a,
  '>': (a: number, b: number) => b < a,
}

function named<Row>(columns: readonly Column<Row>[], name: string): Column<Row> {
  const found = columns.find(({ key }) => key === name)
  if (!found)
    throw new CouldNotRun(`there is no column \`${name}\`; there are ${columns.map(({ key }) => key).join(', ')}`)
  return found
}
