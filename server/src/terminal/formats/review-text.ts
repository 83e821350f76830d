import { styleText } from 'node:util'
import type { Review } from '../../check/review.ts'
import type { Finding, Severity } from '../../findings/finding.ts'
import { monthNames } from '../../findings/months.ts'
import { rank } from '../../findings/severities.ts'
import { cautions } from '../../review/cautions.ts'
import type { ArrayFigures, BatteryFigures, MonthFigures } from '../../review/figures.ts'
import { rough, roughPercent } from '../../review/rough.ts'
import { tooLarge } from '../../review/too-large.ts'
import { shortfallOf, yearOf } from '../../review/year.ts'
import { positionAt } from '../../text/lines.ts'
import type { FileReport } from '../file-report.ts'
import { count, foundInWords } from '../severity.ts'
import { table } from '../tables/table.ts'
import { visible } from '../visible.ts'
import { marginsText, totalsText } from './review-head.ts'
import { measuredText } from './review-measured.ts'
import { keptRows, usesText } from './review-setup.ts'

/** A page that a person reads in two minutes: what was found, the figures, what was not checked, and the cautions. */
export function reviewText({ system, figures }: Review, report: FileReport, colour: boolean): string {
  const { name, kind } = system.system
  const large = tooLarge(figures)
  const measured = measuredText(system)
  return [
    `${visible(name?.text ?? system.id)}\n${kind ? `${kind.value}, ` : ''}${visible(report.path)}\n`,
    `In short\n${totalsText(system, figures)}${large ? `${folded(`  ${large}`)}\n` : ''}`,
    `Found: ${foundInWords(count([report]))}\n${found(report, colour)}`,
    ...(report.accepted.length > 0 ? [`Accepted in the file\n${accepted(report)}`] : []),
    `Limits\n${marginsText(system, figures)}`,
    `Arrays\n${arrays(figures.arrays)}${folded(`  ${sizedFor(system)}`)}\n`,
    `Battery\n${battery(system, figures.battery)}`,
    ...(system.system.loads.length + system.system.other_sources.length > 0
      ? [`Loads and other sources\n${usesText(system)}`]
      : []),
    ...(figures.months.length > 0 ? [`A usual year, in Wh a day\n${months(figures.months)}${shortfall(system)}`] : []),
    ...(measured === '' ? [] : [`Measured on the day\n${measured}`]),
    `Not checked, which is not the same as in order\n${items(figures.not_checked)}`,
    `Cautions\n${items(cautions)}`,
  ].join('\n')
}

/** The most severe first, each with the line that has to change. */
function found({ findings, starts }: FileReport, colour: boolean): string {
  const bySeverity = [...findings].sort((a, b) => rank(a.severity) - rank(b.severity))
  return bySeverity.map((one) => `${folded(`  ${lead(one, starts, colour)} ${visible(one.message)}`)}\n`).join('')
}

const styles = { error: 'red', warning: 'yellow', information: 'blue', hint: 'gray' } as const
const words: Readonly<Record<Severity, string>> = {
  error: 'ERROR',
  warning: 'Warning',
  information: 'Information',
  hint: 'Hint',
}

function lead({ severity, span }: Finding, starts: readonly number[], colour: boolean): string {
  const word = words[severity]
  const painted = colour ? styleText(styles[severity], word, { validateStream: false }) : word
  return `${painted}, line ${positionAt(starts, span.start).line + 1}:`
}

const accepted = ({ accepted: list }: FileReport) =>
  items(list.map(({ finding, because }) => visible(`${finding.message} Accepted: ${because}.`)))

const from = {
  system: 'from the system',
  climate: 'from the climate',
  settings: 'from the settings',
  assumed: 'ASSUMED',
}

function sizedFor({ coldest, hottest, system }: Review['system']): string {
  return `Cold: air of ${coldest.value} °C (${from[coldest.from]}). Hot: bright sun in air of ${hottest.value} °C (${from[hottest.from]}). Currents of cables are guide values, to be confirmed against the local code.${system.site.swings?.value ? ' It swings at anchor: panels count as level.' : ''}`
}

function arrays(list: readonly ArrayFigures[]): string {
  const rows: readonly (readonly [string, (array: ArrayFigures) => string])[] = [
    ['power as printed', (a) => amount(a.pmax_stc_w, 'W')],
    ['power on a hot day', (a) => amount(a.pmax_hot_w, 'W')],
    ['cold Voc', (a) => amount(a.voc_cold_v, 'V', 1)],
    ['hot Vmp', (a) => amount(a.vmp_hot_v, 'V', 1)],
    ['design current, 1.25 x Isc', (a) => amount(a.isc_design_a, 'A', 1)],
    ['cable may carry (guide)', (a) => amount(a.cable?.ampacity_a ?? null, 'A')],
    ['lost in the cable', (a) => roughly(a.cable?.drop_pct ?? null, '%')],
    ['weight with frames', (a) => amount(a.weight_kg, 'kg', 1)],
    ['price of the panels', (a) => amount(a.price?.amount ?? null, a.price?.currency ?? '')],
  ]
  return table([['', ...list.map(({ id }) => id)], ...rows.map(([label, show]) => [`  ${label}`, ...list.map(show)])])
}

function battery(system: Review['system'], b: BatteryFigures): string {
  return table([
    ['  usable', amount(b.usable_wh, 'Wh')],
    ['  lasts without any source', roughly(b.autonomy_days, 'days')],
    [
      '  charged at most at',
      `${amount(b.charge_rate_c, 'C', 2)}${b.charge_rate_c === null ? '' : ' (amperes over ampere-hours)'}`,
    ],
    ...keptRows(system),
  ])
}

function months(list: readonly MonthFigures[]): string {
  const rows = list.map((m) => [
    `  ${monthNames[m.month - 1]}`,
    m.sun_kwh_m2_day.toFixed(1),
    watthours(m.yield_wh_day),
    watthours(m.load_wh_day),
    m.unserved_wh_day === null ? 'not known' : watthours(m.unserved_wh_day),
    m.lowest_soc === null ? 'not known' : `${(100 * m.lowest_soc).toFixed(0)} %`,
  ])
  return table([['', 'sun kWh/m2', 'panels give', 'loads take', 'unmet load', 'lowest state of charge'], ...rows])
}

function shortfall(system: Review['system']): string {
  const year = yearOf(system)
  const all = year && shortfallOf(year)
  if (!all || all.load === 0) return ''
  const { load, unserved, shortHours, hours } = all
  const kilowatthours = `${(load / 1000).toFixed(0)} kWh that the loads take in the year`
  const bad =
    year.unservedP90 === null || system.weather
      ? ''
      : `; in one year of ten ${roughPercent(year.unservedP90 / load)} or more`
  const said =
    shortHours === 0
      ? `All of the ${kilowatthours} are supplied.`
      : `Of the ${kilowatthours} ${roughPercent(unserved / load)} are unmet load, in ${roughPercent(shortHours / hours)} of its hours${bad}.`
  return `${folded(`  ${said} ${system.weather ? 'The days are those of the hourly weather file.' : 'Dull days come in runs here as they do outside, around monthly means that real years also miss.'}`)}\n`
}

const amount = (value: number | null, unit: string, digits = 0) =>
  value === null ? 'not known' : `${value.toFixed(digits)} ${unit}`.trimEnd()

const roughly = (value: number | null, unit: string) => (value === null ? 'not known' : `${rough(value)} ${unit}`)

/** A figure of the simulation, to two digits above ten: it is worth no more. */
const watthours = (wh: number) => String(wh < 10 ? Math.round(wh) : Number(wh.toPrecision(2)))

const items = (list: readonly string[]) => list.map((line) => `${folded(`  - ${line}`)}\n`).join('')

/** Lines of at most 100 characters where words allow, the later ones set in. */
function folded(text: string): string {
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
