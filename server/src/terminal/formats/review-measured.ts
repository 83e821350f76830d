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
import type { Bundle } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'

/** Each measured value beside the expected one, and by year what is left of the power; empty where nothing was measured. */
export function measuredText(system: ResolvedSystem, bundle: Bundle | undefined): string {
  const say = sayIn(bundle)
  const { strings, trends } = measuredOf(system)
  if (strings.length === 0) return ''
  const rows = strings.flatMap((one) =>
    quantities.flatMap((quantity) => {
      const reading = one.string.readings.get(quantity)
      return reading ? [row(one, reading, bundle)] : []
    }),
  )
  const head = ['', say`string`, '', say`expected`, say`measured`, say`difference`, say`uncertain by`, say`verdict`]
  const { limit } = accuracyOf(system)
  const note = say`A difference within ${share(limit)}, or within its uncertainty (meter, irradiance, temperature), is no finding.`
  const left = trends.length > 0 ? `\n${say`Power left by year`}\n${leftText(trends, bundle)}` : ''
  return `${table([head, ...once(rows)])}  ${note}\n${left}`
}

function row(one: MeasuredFindings, reading: Reading, bundle: Bundle | undefined): readonly string[] {
  const say = sayIn(bundle)
  const { quantity, field, expected, off, apart } = reading
  const { measurement, array, number } = one.string
  const by = one.low.find((low) => low.reading.quantity === quantity && !low.power)?.by ?? off ?? apart
  const difference = by ? differenceText(by.share) : ''
  return [
    `  ${measurement.entry.date?.text ?? ''} ${nameOf(array, bundle)}`,
    String(number),
    namesOf[quantity],
    expected === null ? say`not known` : `${formatNumber(expected, 3)} ${unitsOf[quantity]}`,
    field.text,
    by && by === apart ? say`${difference} (to others)` : difference,
    by ? share(by.uncertainty) : '',
    verdictOf(one, reading, bundle),
  ]
}

const share = (value: number) => `${formatNumber(100 * value, 2)} %`

/** The same date, array and string only in their first row. */
function once(rows: readonly (readonly string[])[]): readonly (readonly string[])[] {
  return rows.map((cells, i) => {
    const before = rows[i - 1]
    const [sameDate, number] = [cells[0] === before?.[0], cells[0] === before?.[0] && cells[1] === before?.[1]]
    return cells.map((cell, column) => ((column === 0 && sameDate) || (column === 1 && number) ? '' : cell))
  })
}

function leftText(trends: readonly Trend[], bundle: Bundle | undefined): string {
  const say = sayIn(bundle)
  const rows = trends.flatMap(({ points }) => points.map((point) => leftRow(point, bundle)))
  return `${table([['', say`after`, say`power left`, say`warranted, less tolerance`, say`from`], ...rows])}${trends.map((trend) => ending(trend, bundle)).join('')}`
}

function leftRow(
  { date, array, years, left, uncertainty, warranted, from }: PowerLeft,
  bundle: Bundle | undefined,
): readonly string[] {
  const say = sayIn(bundle)
  return [
    `  ${date} ${nameOf(array, bundle)}`,
    say`${years.toFixed(1)} years`,
    `${share(left)} ± ${share(uncertainty)}`,
    warranted === null ? say`nothing` : share(warranted),
    from === 'power' ? 'Vmp x Imp' : say`Voc x Isc, which fall less`,
  ]
}

function ending(trend: Trend, bundle: Bundle | undefined): string {
  const say = sayIn(bundle)
  const { array, line } = trend
  const name = nameOf(array, bundle)
  if (!line) return `  ${say`${name}: one date gives no trend.`}\n`
  const pace = `${line.slope < 0 ? '' : '+'}${share(line.slope)}`
  return `  ${say`${name}: ${pace} a year; at this pace ${endingInWords(trend)}.`}\n`
}
