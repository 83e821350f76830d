import { inUsual } from '../wording/usual-units.ts'
import { translated, unitsOf, type Bundle } from '../wording/bundle.ts'
import { inCatalogue, type Phrase } from '../wording/phrase.ts'

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
  readonly label: string | Phrase
  /** What is better: `more`, `less`, or neither, and then the alphabet sorts. */
  readonly better?: 'more' | 'less'
  /** Its text in English, or as a bundle has it. */
  readonly cell: (row: Row, bundle?: Bundle) => Cell
  /** What sorting and filters take instead of a text that says a number: what it says, and what a condition does. */
  readonly measure?: {
    readonly of: (row: Row) => Measured | null
    readonly read: (condition: string) => Measured | null
  }
}

/** Only what has the same unit is compared. */
export interface Measured {
  readonly value: number
  readonly unit?: string
}

export const unknown: Cell = { value: null, text: inCatalogue`not known` }

/** A word of our own: machines get the English one. */
export const wordCell = (text: string, bundle: Bundle | undefined): Cell => ({
  value: text,
  text: translated(text, bundle),
})

/** Yes or no. */
export const answerCell = (is: boolean, bundle: Bundle | undefined): Cell =>
  wordCell(is ? inCatalogue`yes` : inCatalogue`no`, bundle)

/** Without what binary fractions add in the last digits: 14.9, not 14.899999999999999, so that `= 14.9` finds it. */
const plain = (value: number) => Number(value.toPrecision(12))

/** A number in the unit that people read it in; filters compare with the metric one. */
export function numberCell(value: number | null, digits: number, unit = '', times = 1, bundle?: Bundle): Cell {
  if (value === null) return unknown
  const shown = inUsual(value * times, unit, unitsOf(bundle))
  return { value: plain(value * times), text: `${shown.value.toFixed(digits)} ${shown.unit}`.trimEnd() }
}

export const textCell = (text: string | null, none = unknown): Cell => (text === null ? none : { value: text, text })

export function moneyCell(
  money: { readonly amount: number; readonly currency: string } | null,
  digits = 2,
  per = '',
): Cell {
  if (!money) return unknown
  const { amount, currency } = money
  return { value: plain(amount), text: `${amount.toFixed(digits)} ${currency}${per}`, unit: currency }
}
