import { monthNames } from '../../findings/months.ts'
import type { Review } from '../../check/review.ts'
import type { ArrayFigures, BatteryFigures, MonthFigures } from '../../review/figures.ts'
import { rough, roughPercent } from '../../review/rough.ts'
import { shortfallOf, yearOf } from '../../review/year.ts'
import { table } from '../tables/table.ts'
import { translated, type Bundle } from '../../wording/bundle.ts'
import { inCatalogue, sayIn } from '../../wording/phrase.ts'
import { keptRows } from './review-setup.ts'

/** What each array gives, a column for each. */
export function arraysText(list: readonly ArrayFigures[], bundle: Bundle | undefined): string {
  const amount = amountIn(bundle)
  const roughly = roughlyIn(bundle)
  const rows: readonly (readonly [string, (array: ArrayFigures) => string])[] = [
    [inCatalogue`power as printed`, (a) => amount(a.pmax_stc_w, 'W')],
    [inCatalogue`power on a hot day`, (a) => amount(a.pmax_hot_w, 'W')],
    [inCatalogue`cold Voc`, (a) => amount(a.voc_cold_v, 'V', 1)],
    [inCatalogue`hot Vmp`, (a) => amount(a.vmp_hot_v, 'V', 1)],
    [inCatalogue`design current, 1.25 x Isc`, (a) => amount(a.isc_design_a, 'A', 1)],
    [inCatalogue`cable may carry (guide)`, (a) => amount(a.cable?.ampacity_a ?? null, 'A')],
    [inCatalogue`lost in the cable`, (a) => roughly(a.cable?.drop_pct ?? null, '%')],
    [inCatalogue`weight with frames`, (a) => amount(a.weight_kg, 'kg', 1)],
    [inCatalogue`price of the panels`, (a) => amount(a.price?.amount ?? null, a.price?.currency ?? '')],
  ]
  return table([
    ['', ...list.map(({ id }) => id)],
    ...rows.map(([label, show]) => [`  ${translated(label, bundle)}`, ...list.map(show)]),
  ])
}

/** What the battery holds and how it is kept. */
export function batteryText(system: Review['system'], b: BatteryFigures, bundle: Bundle | undefined): string {
  const say = sayIn(bundle)
  const rate = amountIn(bundle)(b.charge_rate_c, 'C', 2)
  const days = b.autonomy_days
  return table([
    [`  ${say`usable`}`, amountIn(bundle)(b.usable_wh, 'Wh')],
    [`  ${say`lasts without any source`}`, days === null ? say`not known` : say`${rough(days)} days`],
    [`  ${say`charged at most at`}`, b.charge_rate_c === null ? rate : say`${rate} (amperes over ampere-hours)`],
    ...keptRows(system, bundle),
  ])
}

/** A row for each month of a usual year. */
export function monthsText(list: readonly MonthFigures[], bundle: Bundle | undefined): string {
  const say = sayIn(bundle)
  const rows = list.map((m) => [
    `  ${translated(monthNames[m.month - 1]!, bundle)}`,
    m.sun_kwh_m2_day.toFixed(1),
    watthours(m.yield_wh_day),
    watthours(m.load_wh_day),
    m.unserved_wh_day === null ? say`not known` : watthours(m.unserved_wh_day),
    m.lowest_soc === null ? say`not known` : `${(100 * m.lowest_soc).toFixed(0)} %`,
  ])
  return table([
    ['', say`sun kWh/m2`, say`panels give`, say`loads take`, say`unmet load`, say`lowest state of charge`],
    ...rows,
  ])
}

/** How much of what the loads take goes unmet in a year, in a sentence. */
export function shortfall(system: Review['system'], bundle: Bundle | undefined): string {
  const year = yearOf(system)
  const all = year && shortfallOf(year)
  if (!all || all.load === 0) return ''
  const say = sayIn(bundle)
  const { load, unserved, shortHours, hours } = all
  const taken = (load / 1000).toFixed(0)
  const [unmet, time] = [roughPercent(unserved / load, bundle), roughPercent(shortHours / hours, bundle)]
  const bad = year.unservedP90 === null || system.weather ? null : roughPercent(year.unservedP90 / load, bundle)
  const said =
    shortHours === 0
      ? say`All of the ${taken} kWh that the loads take in the year are supplied.`
      : bad === null
        ? say`Of the ${taken} kWh that the loads take in the year ${unmet} are unmet load, in ${time} of its hours.`
        : say`Of the ${taken} kWh that the loads take in the year ${unmet} are unmet load, in ${time} of its hours; in one year of ten ${bad} or more.`
  const days = system.weather
    ? say`The days are those of the hourly weather file.`
    : say`Dull days come in runs here as they do outside, around monthly means that real years also miss.`
  return `${folded(`  ${said} ${days}`)}\n`
}

const amountIn =
  (bundle: Bundle | undefined) =>
  (value: number | null, unit: string, digits = 0): string =>
    value === null ? sayIn(bundle)`not known` : `${value.toFixed(digits)} ${unit}`.trimEnd()

const roughlyIn = (bundle: Bundle | undefined) => (value: number | null, unit: string) =>
  value === null ? sayIn(bundle)`not known` : `${rough(value)} ${unit}`

/** A figure of the simulation, to two digits above ten: it is worth no more. */
const watthours = (wh: number) => String(wh < 10 ? Math.round(wh) : Number(wh.toPrecision(2)))

/** Lines of at most 100 characters where words allow, the later ones set in. */
export function folded(text: string): string {
  const lines: string[] = []
  let line = /^ */.exec(text)![0]
  for (const word of text.trimStart().split(' ')) {
    const isFirst = line.trim() === ''
    if (!isFirst && `${line} ${word}`.length > 100) {
      lines.push(line)
      line = `    ${word}`
    } else line += isFirst ? word : ` ${word}`
  }
  return [...lines, line].join('\n')
}
