import { CouldNotRun } from '../could-not-run.ts'
import { unknown, type Cell, type Column } from '../../rows/cell.ts'
import { phrase } from '../../wording/phrase.ts'

/** The columns that a person names, in that order; the first of all leads where it is not among them. */
export function chosen<Row>(columns: readonly Column<Row>[], names: string | undefined): readonly Column<Row>[] {
  if (names === undefined) return columns
  const picked = names.split(',').map((name) => named(columns, name.trim()))
  return picked.includes(columns[0]!) ? picked : [columns[0]!, ...picked]
}

/** Best first, or with a minus before the name the other way; what is not known is last, and where nothing decides the order stays. */
export function sorted<Row>(rows: readonly Row[], columns: readonly Column<Row>[], name: string | undefined) {
  if (name === undefined) return rows
  const isTurned = name.startsWith('-')
  const column = named(columns, isTurned ? name.slice(1) : name)
  const better = (column.better === 'more') !== isTurned ? 'more' : 'less'
  return [...rows].sort((a, b) => order(ranked(column, a), ranked(column, b), better))
}

/** What a row is sorted by. */
const ranked = <Row>({ cell, measure }: Column<Row>, row: Row): Cell =>
  measure ? { ...unknown, ...measure.of(row) } : cell(row)

function order(a: Cell, b: Cell, better: 'more' | 'less'): number {
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
  const match = /^([\w./-]+?)\s*(<=|>=|<|>|=)(.+)$/.exec(filter.trim())
  if (!match) throw new CouldNotRun(phrase`--filter "${filter}": write a column, one of < <= = >= >, and a value`)
  const [, name, sign, typed] = match as unknown as [string, string, string, string]
  const wanted = typed.trim()
  const { cell, measure } = named(columns, name)
  if (measure) {
    const limit = measure.read(wanted)
    if (limit === null) throw new CouldNotRun(phrase`--filter "${filter}": \`${wanted}\` is no value of ${name}`)
    return (row) => {
      const one = measure.of(row)
      return one !== null && one.unit === limit.unit && holds[sign as keyof typeof holds](one.value, limit.value)
    }
  }
  const limit = numberWithUnit(wanted)
  return (row) => {
    const { value, unit, text } = cell(row)
    if (value === null) return false
    if (typeof value === 'string') {
      if (sign !== '=') throw new CouldNotRun(phrase`--filter "${filter}": ${name} holds words; only = compares them`)
      return [value, text].some((one) => one.toLowerCase() === wanted.toLowerCase())
    }
    if (limit === null) throw new CouldNotRun(phrase`--filter "${filter}": ${name} holds numbers`)
    const currency = /^[A-Z]{3}/i.exec(limit.unit)?.[0].toUpperCase()
    if (unit !== undefined && currency !== undefined && unit !== currency) return false
    const own = numberWithUnit(text)?.unit ?? ''
    if (unit === undefined && limit.unit !== '' && limit.unit.toLowerCase() !== own.toLowerCase())
      throw new CouldNotRun(
        own === ''
          ? phrase`--filter "${filter}": ${name} has no unit`
          : phrase`--filter "${filter}": ${name} is in ${own}`,
      )
    return holds[sign as keyof typeof holds](value, limit.value)
  }
}

/** A number and what follows it; null for what is no number, such as one with a comma, which means different things to people. */
function numberWithUnit(text: string): { readonly value: number; readonly unit: string } | null {
  const number = /^[-+]?\d*\.?\d*(?:e[-+]?\d+)?/i.exec(text)![0]
  const rest = text.slice(number.length)
  return /\d/.test(number) && !/^[.,\d]/.test(rest) ? { value: Number(number), unit: rest.trim() } : null
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
    throw new CouldNotRun(phrase`there is no column \`${name}\`; there are ${columns.map(({ key }) => key).join(', ')}`)
  return found
}
