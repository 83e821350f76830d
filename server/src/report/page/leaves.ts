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

/** On paper nothing leads anywhere. */
const drawing = { links: false }
const planSize = { width: 336, height: 168 }

/** What stands on the page beside the figures. */
export interface Stamp {
  /** Year-month-day. */
  readonly date: string
  /** Of the records, in words; null where they are in no repository. */
  readonly revision: string | null
}

/** The first leaf is for the customer, the second for whoever installs; what was measured on the day is on a third. */
export function leavesOf(data: PageData, written: Written, stamp: Stamp): readonly Leaf[] {
  const { picture } = data
  const subtitle = [data.kind, stamp.date, stamp.revision ?? 'records without a revision'].filter(Boolean).join(' · ')
  return [
    { title: picture.name, subtitle, sections: forCustomer(data, written) },
    { title: `For the installer: ${picture.name}`, subtitle, sections: forInstaller(data, written) },
    ...measuredLeaf(data, drawing, subtitle),
  ]
}

function forCustomer(data: PageData, written: Written) {
  const { picture, promises, parts, findings, accepted, warranty, cautions } = data
  const { plans, figures, charge } = picture
  const worth = findings.filter(({ severity }) => severity === 'error' || severity === 'warning')
  return [
    ...section('What is proposed', { type: 'text', text: `${proposal(picture)} ${promises.join(' ')}` }),
    ...section('Where the panels go', {
      type: 'pictures',
      pictures: drawn(...plans.map((plan) => [plan.id, planPicture(drawing, plan, written, planSize)] as const)),
    }),
    ...section('Through a usual year', {
      type: 'pictures',
      pictures: drawn(
        ['What the panels give and what you use', monthsPicture(drawing, figures.months)],
        ['How full the battery is', charge ? chargePicture(drawing, charge) : ''],
      ),
      instead: monthsTable(figures.months),
    }),
    ...section('Parts', { type: 'table', table: partsTable(parts, written) }),
    ...half(section('Warranty', { type: 'list', items: warranty })),
    ...half(
      section('What was found', {
        type: 'list',
        items: worth.length > 0 ? worth.map(({ message }) => message) : ['Nothing that needs a change.'],
      }),
    ),
    ...section('Accepted, with the reason', {
      type: 'list',
      items: accepted.map(({ message, because }) => `${message} Accepted: ${because}.`),
    }),
    ...section('Cautions', { type: 'list', items: cautions }),
  ]
}

/** Who lives with it wants to know what it is before what it does. */
function proposal({ wiring, figures, plans }: PageData['picture']): string {
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
  const on = plans.length > 0 ? ` on ${joinWords(plans.map(({ id }) => id))}` : ''
  const power = watts === null ? '' : `, ${whole(watts)} W in full sun`
  const holds = usable === null ? '' : `, of which ${formatNumber(usable / 1000, 2)} kWh can be used`
  return `Solar panels (${joinWords(panels)}${power})${on} charge a battery (${bank}${holds}).`
}

function forInstaller(data: PageData, written: Written) {
  const { wiring, windows, figures } = data.picture
  const others = data.findings.filter(({ severity }) => severity === 'information' || severity === 'hint')
  return [
    ...section('One-line diagram', {
      type: 'pictures',
      pictures: drawn(['', oneLine(drawing, wiring, written)]),
    }),
    ...section('Wiring', { type: 'table', table: wiringTable(wiring) }),
    ...section('Fuses and cables', { type: 'table', table: cablesTable(wiring, written) }),
    ...section('Settings of the controllers', { type: 'table', table: settingsTable(wiring, written) }),
    ...half(
      section('Voltage of the strings', { type: 'pictures', pictures: drawn(['', windowsPicture(drawing, windows)]) }),
    ),
    ...half(section('Assumed', { type: 'text', text: [temperatures(data, written), ...data.assumptions].join(' ') })),
    ...section('Checked', { type: 'table', table: limitsTable(data.margins, written), columns: 2 }),
    ...section('Not checked, which is not the same as in order', {
      type: 'list',
      items: figures.not_checked,
      columns: 2,
    }),
    ...section('Also noticed', { type: 'list', items: others.map(({ message }) => message) }),
  ]
}

const from: Readonly<Record<SiteTemperature['from'], string>> = {
  system: 'given',
  climate: 'of the place',
  settings: 'of the library',
  assumed: 'assumed',
}

const temperatures = ({ coldest, hottest }: PageData, { celsius }: Written) =>
  `Air from ${celsius(coldest.value)} (${from[coldest.from]}) to ${celsius(hottest.value)} (${from[hottest.from]}).`
