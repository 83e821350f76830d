import { formatNumber } from '../../quantities/format.ts'
import { accuracyOf } from '../../review/measured/accuracy.ts'
import { verdictOf } from '../../review/measured/verdict.ts'
import { measuredOf } from '../../review/measured/measured.ts'
import type { MeasuredFindings } from '../../review/measured/measured-findings.ts'
import type { PowerLeft, Trend } from '../../review/measured/power-left.ts'
import { endingInWords } from '../../review/measured/ending-in-words.ts'
import { differenceText, nameOf } from '../../review/measured/in-words.ts'
import { namesOf, quantities, unitsOf, type Reading } from '../../review/measured/string.ts'
import type { ResolvedSystem } from '../../review/resolved.ts'
import { table } from '../tables/table.ts'

/** Each measured value beside the expected one, and by year what is left of the power; empty where nothing was measured. */
export function measuredText(system: ResolvedSystem): string {
  const { strings, trends } = measuredOf(system)
  if (strings.length === 0) return ''
  const rows = strings.flatMap((one) =>
    quantities.flatMap((quantity) => {
      const reading = one.string.readings.get(quantity)
      return reading ? [row(one, reading)] : []
    }),
  )
  const head = ['', 'string', '', 'expected', 'measured', 'difference', 'uncertain by', 'verdict']
  const { limit } = accuracyOf(system)
  const note = `  A difference within ${share(limit)}, or within its uncertainty (meter, irradiance, temperature), is no finding.\n`
  return `${table([head, ...once(rows)])}${note}${trends.length > 0 ? `\nPower left by year\n${leftText(trends)}` : ''}`
}

function row(one: MeasuredFindings, reading: Reading): readonly string[] {
  const { quantity, field, expected, off, apart } = reading
  const { measurement, array, number } = one.string
  const by = one.low.find((low) => low.reading.quantity === quantity && !low.power)?.by ?? off ?? apart
  const against = by && by === apart ? ' (to others)' : ''
  return [
    `  ${measurement.entry.date?.text ?? ''} ${nameOf(array)}`,
    String(number),
    namesOf[quantity],
    expected === null ? 'not known' : `${formatNumber(expected, 3)} ${unitsOf[quantity]}`,
    field.text,
    by ? `${differenceText(by.share)}${against}` : '',
    by ? share(by.uncertainty) : '',
    verdictOf(one, reading),
  ]
}

const share = (value: number) => `${formatNumber(100 * value, 2)} %`

/** The same date, array and string only in their first row. */
function once(rows: readonly (readonly string[])[]): readonly (readonly string[])[] {
  return rows.map((cells, i) => {
    const before = rows[i - 1]
    const [place, number] = [cells[0] === before?.[0], cells[0] === before?.[0] && cells[1] === before?.[1]]
    return cells.map((cell, column) => ((column === 0 && place) || (column === 1 && number) ? '' : cell))
  })
}

function leftText(trends: readonly Trend[]): string {
  const rows = trends.flatMap(({ points }) => points.map((point) => leftRow(point)))
  return `${table([['', 'after', 'power left', 'warranted, less tolerance', 'from'], ...rows])}${trends.map(ending).join('')}`
}

const leftRow = ({ date, array, years, left, uncertainty, warranted, from }: PowerLeft): readonly string[] => [
  `  ${date} ${nameOf(array)}`,
  `${years.toFixed(1)} years`,
  `${share(left)} ± ${share(uncertainty)}`,
  warranted === null ? 'nothing' : share(warranted),
  from === 'power' ? 'Vmp x Imp' : 'Voc x Isc, which fall less',
]

function ending(trend: Trend): string {
  const { array, line } = trend
  const name = nameOf(array)
  if (!line) return `  ${name}: one date gives no trend.\n`
  const pace = `${line.slope < 0 ? '' : '+'}${share(line.slope)} a year`
  return `  ${name}: ${pace}; at this pace ${endingInWords(trend)}.\n`
}
