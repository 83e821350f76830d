import type { Review } from '../../check/review.ts'
import { cautions } from '../../review/cautions.ts'
import type { ArrayFigures, Figures } from '../../review/figures.ts'
import { monthNames } from '../../values/months.ts'
import type { FileReport } from '../file-report.ts'
import { table } from '../table.ts'
import { formatText } from './text.ts'

/** A page that a person reads in two minutes: what was found, the figures, what was not checked, and the cautions. */
export function reviewText({ system, figures }: Review, report: FileReport, colour: boolean): string {
  const name = system.system.name?.text ?? system.id
  const { coldest, hottest } = system
  return [
    `${name}\n`,
    `Sized for ${coldest.value} °C on the coldest morning (${coldest.from}) and ${hottest.value} °C on a hot day (${hottest.from}).\n`,
    formatText([report], colour),
    `Arrays\n${arrays(figures.arrays)}`,
    `Battery\n${battery(figures)}`,
    ...(figures.months.length > 0 ? [`A year, in Wh a day\n${months(figures)}`] : []),
    ...(figures.not_checked.length > 0 ? [`Not checked\n${items(figures.not_checked)}`] : []),
    `Cautions\n${items(cautions)}`,
  ].join('\n')
}

function arrays(list: readonly ArrayFigures[]): string {
  const rows: readonly (readonly [string, (array: ArrayFigures) => string])[] = [
    ['power at 25 °C', (a) => amount(a.pmax_stc_w, 'W')],
    ['power hot', (a) => amount(a.pmax_hot_w, 'W')],
    ['highest voltage, cold', (a) => amount(a.voc_cold_v, 'V', 1)],
    ['working voltage, hot', (a) => amount(a.vmp_hot_v, 'V', 1)],
    ['design current, 1.25 Isc', (a) => amount(a.isc_design_a, 'A', 1)],
    ['cable drop', (a) => amount(a.cable?.drop_pct ?? null, '%', 1)],
    ['cable may carry (guide)', (a) => amount(a.cable?.ampacity_a ?? null, 'A')],
    ['panels and frames', (a) => amount(a.weight_kg, 'kg', 1)],
    ['price of the panels', (a) => amount(a.price?.amount ?? null, a.price?.currency ?? '')],
  ]
  return table([['', ...list.map(({ id }) => id)], ...rows.map(([label, show]) => [`  ${label}`, ...list.map(show)])])
}

function battery({ battery: b }: Figures): string {
  return table([
    ['  usable', amount(b.usable_wh, 'Wh')],
    ['  lasts without sun', amount(b.autonomy_days, 'days', 1)],
    ['  charge current over capacity', amount(b.charge_rate_c, 'C', 2)],
  ])
}

function months({ months: list }: Figures): string {
  const rows = list.map((m) => [
    `  ${monthNames[m.month - 1]}`,
    m.sun_kwh_m2_day.toFixed(1),
    m.yield_wh_day.toFixed(0),
    m.load_wh_day.toFixed(0),
    m.lowest_soc === null ? 'not known' : `${(100 * m.lowest_soc).toFixed(0)} %`,
    m.unserved_wh_day === null ? 'not known' : m.unserved_wh_day.toFixed(0),
  ])
  return table([['', 'sun kWh/m2', 'yield', 'load', 'battery at least', 'not met'], ...rows])
}

const amount = (value: number | null, unit: string, digits = 0) =>
  value === null ? 'not known' : `${value.toFixed(digits)} ${unit}`.trimEnd()

const items = (list: readonly string[]) => list.map((line) => `${folded(`  - ${line}`)}\n`).join('')

/** Lines of at most 100 characters, the later ones set in. */
const folded = (text: string) => text.replace(/(?=.{101})(.{1,100}) /g, '$1\n    ')
