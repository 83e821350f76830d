import { formatNumber } from '../../quantities/format.ts'
import { joinWords } from '../../findings/join-words.ts'
import type { PageData } from '../../review/page/page-data.ts'
import type { SiteTemperature } from '../../review/resolved.ts'
import { oneLine } from '../diagram/one-line.ts'
import { drawn } from '../drawn.ts'
import { chargePicture } from '../pictures/charge.ts'
import { monthsPicture } from '../pictures/months.ts'
import { planPicture } from '../pictures/plan.ts'
import { windowsPicture } from '../pictures/windows.ts'
import { whole } from '../numbers.ts'
import type { Written } from '../units.ts'
import { half, section, type Leaf } from './blocks.ts'
import { measuredLeaf } from './measured-leaf.ts'
import { limitsTable, monthsTable } from './limits-table.ts'
import { cablesTable, partsTable, settingsTable, wiringTable } from './tables.ts'
import { kindInWords } from '../../review/kind-in-words.ts'
import type { Bundle } from '../../wording/bundle.ts'
import { phrase, sayIn, type Phrase } from '../../wording/phrase.ts'

/** On paper nothing leads anywhere. */
const onPaper = (bundle: Bundle | undefined) => ({ links: false, bundle })
const planSize = { width: 336, height: 168 }

/** What stands on the page beside the figures. */
export interface Stamp {
  /** Year-month-day. */
  readonly date: string
  /** Of the records, in words; null where they are in no repository. */
  readonly revision: string | null
}

/** The first leaf is for the customer, the second for whoever installs; what was measured on the day is on a third. */
export function leavesOf(data: PageData, written: Written, stamp: Stamp, bundle?: Bundle): readonly Leaf[] {
  const say = sayIn(bundle)
  const { picture } = data
  const kind = data.kind && kindInWords(data.kind, bundle)
  const subtitle = [kind, stamp.date, stamp.revision ?? say`records without a revision`].filter(Boolean).join(' · ')
  return [
    { title: picture.name, subtitle, sections: forCustomer(data, written, bundle) },
    { title: say`For the installer: ${picture.name}`, subtitle, sections: forInstaller(data, written, bundle) },
    ...measuredLeaf(data, onPaper(bundle), subtitle),
  ]
}

function forCustomer(data: PageData, written: Written, bundle: Bundle | undefined) {
  const say = sayIn(bundle)
  const drawing = onPaper(bundle)
  const { picture, promises, parts, findings, accepted, warranty, cautions } = data
  const { plans, figures, charge } = picture
  const worth = findings.filter(({ severity }) => severity === 'error' || severity === 'warning')
  return [
    ...section(say`What is proposed`, { type: 'text', text: `${proposal(picture, bundle)} ${promises.join(' ')}` }),
    ...section(say`Where the panels go`, {
      type: 'pictures',
      pictures: drawn(...plans.map((plan) => [plan.id, planPicture(drawing, plan, written, planSize)] as const)),
    }),
    ...section(say`Through a usual year`, {
      type: 'pictures',
      pictures: drawn(
        [say`What the panels give and what you use`, monthsPicture(drawing, figures.months)],
        [say`How full the battery is`, charge ? chargePicture(drawing, charge) : ''],
      ),
      instead: monthsTable(figures.months, bundle),
    }),
    ...section(say`Parts`, { type: 'table', table: partsTable(parts, written, say) }),
    ...half(section(say`Warranty`, { type: 'list', items: warranty })),
    ...half(
      section(say`What was found`, {
        type: 'list',
        items: worth.length > 0 ? worth.map(({ message }) => message) : [say`Nothing that needs a change.`],
      }),
    ),
    ...section(say`Accepted, with the reason`, {
      type: 'list',
      items: accepted.map(({ message, because }) => say`${message} Accepted: ${because}.`),
    }),
    ...section(say`Cautions`, { type: 'list', items: cautions }),
  ]
}

/** Who lives with it wants to know what it is before what it does. */
function proposal({ wiring, figures, plans }: PageData['picture'], bundle: Bundle | undefined): string {
  const say = sayIn(bundle)
  const counts = new Map<string, number>()
  for (const { name, count } of wiring.arrays.flatMap(({ panels }) => panels))
    counts.set(name, (counts.get(name) ?? 0) + count)
  const panels = [...counts].map(([name, count]) => `${count} x ${name}`)
  const watts = figures.arrays.reduce<number | null>(
    (sum, { pmax_stc_w: w }) => (sum === null || w === null ? null : sum + w),
    0,
  )
  const { battery } = wiring
  const bank = `${battery.in_series * battery.in_parallel} x ${battery.name}`
  const { usable_wh: usable } = figures.battery
  const surfaces = joinWords(
    plans.map(({ id }) => id),
    bundle,
  )
  const all = joinWords(panels, bundle)
  const given = watts === null ? all : say`${all}, ${whole(watts)} W in full sun`
  const kept = usable === null ? bank : say`${bank}, of which ${formatNumber(usable / 1000, 2)} kWh can be used`
  return surfaces === ''
    ? say`Solar panels (${given}) charge a battery (${kept}).`
    : say`Solar panels (${given}) on ${surfaces} charge a battery (${kept}).`
}

function forInstaller(data: PageData, written: Written, bundle: Bundle | undefined) {
  const say = sayIn(bundle)
  const drawing = onPaper(bundle)
  const { wiring, windows, figures } = data.picture
  const others = data.findings.filter(({ severity }) => severity === 'information' || severity === 'hint')
  return [
    ...section(say`One-line diagram`, {
      type: 'pictures',
      pictures: drawn(['', oneLine(drawing, wiring, written)]),
    }),
    ...section(say`Wiring`, { type: 'table', table: wiringTable(wiring, say) }),
    ...section(say`Fuses and cables`, { type: 'table', table: cablesTable(wiring, written, say) }),
    ...section(say`Settings of the controllers`, { type: 'table', table: settingsTable(wiring, written, say) }),
    ...half(
      section(say`Voltage of the strings`, {
        type: 'pictures',
        pictures: drawn(['', windowsPicture(drawing, windows)]),
      }),
    ),
    ...half(
      section(say`Assumed`, { type: 'text', text: [temperatures(data, written, say), ...data.assumptions].join(' ') }),
    ),
    ...section(say`Checked`, { type: 'table', table: limitsTable(data.margins, written, say), columns: 2 }),
    ...section(say`Not checked, which is not the same as in order`, {
      type: 'list',
      items: figures.not_checked,
      columns: 2,
    }),
    ...section(say`Also noticed`, { type: 'list', items: others.map(({ message }) => message) }),
  ]
}

const from: Readonly<Record<SiteTemperature['from'], Phrase>> = {
  system: phrase`given`,
  climate: phrase`of the place`,
  settings: phrase`of the library`,
  assumed: phrase`assumed`,
}

const temperatures = ({ coldest, hottest }: PageData, { celsius }: Written, say: ReturnType<typeof sayIn>) =>
  say`Air from ${celsius(coldest.value)} (${from[coldest.from]}) to ${celsius(hottest.value)} (${from[hottest.from]}).`
