import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { reviewOf } from '../../server/src/check/review.ts'
import { surfaceComparison } from '../../server/src/check/surface-comparison.ts'
import { firstTargetOn } from '../../server/src/check/target-on.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { bestFirst, withFront } from '../../server/src/review/choosing/front.ts'
import { unknownRow, type SurfaceRow } from '../../server/src/review/choosing/row.ts'
import { controller, panel, priced, system } from '../terminal/surface-library.ts'

const bank = readFileSync('samples/systems/batteries/example-lfp-100.battery.yaml', 'utf8')
const bay = readFileSync('samples/systems/climates/example-bay.climate.yaml', 'utf8')

function compared(text: string, more: Record<string, string> = {}) {
  const library = createLibrary()
  const files = {
    'wattproof.yaml': 'format: 1\nname: Ours\n',
    'small.panel.yaml': panel({ pmax: 55, length: 590, more: priced }),
    'large.panel.yaml': panel({ more: priced }),
    'c100.controller.yaml': controller(100),
    'bank.battery.yaml': bank,
    'example-bay.climate.yaml': bay,
    'van.system.yaml': text,
    ...more,
  }
  for (const [path, one] of Object.entries(files)) library.put(path, one)
  const file = library.file('van.system.yaml')!
  const { system: resolved } = reviewOf(library, file)!
  const { rows } = surfaceComparison(library, file, firstTargetOn(resolved, 'roof')!)
  return { rows, of: (id: string) => rows.find((row) => row.panel === id)! }
}

const row = (id: string, more: Partial<SurfaceRow>): SurfaceRow => ({ ...unknownRow, panel: id, count: 1, ...more })
const usd = (amount: number) => ({ amount, currency: 'USD' })
const front = (rows: readonly SurfaceRow[]) =>
  withFront(rows)
    .filter((one) => one.front)
    .map((one) => one.panel)
    .join(' ')

test.each([
  { of: 'more energy for the same', rows: [row('a', { kwh_year: 2 }), row('b', { kwh_year: 1 })], front: 'a' },
  { of: 'the very same twice', rows: [row('a', { kwh_year: 2 }), row('b', { kwh_year: 2 })], front: 'a b' },
  {
    of: 'less energy, less weight',
    rows: [row('a', { kwh_year: 2, weight_kg: 3 }), row('b', { kwh_year: 1, weight_kg: 2 })],
    front: 'a b',
  },
  {
    of: 'less energy for more money',
    rows: [row('a', { kwh_year: 2, price: usd(1) }), row('b', { kwh_year: 1, price: usd(2) })],
    front: 'a',
  },
  {
    of: 'money of another kind is not compared',
    rows: [row('a', { kwh_year: 2, price: usd(1) }), row('b', { kwh_year: 1, price: { amount: 2, currency: 'EUR' } })],
    front: 'a b',
  },
  {
    of: 'a weight that only the better does not know',
    rows: [row('a', { kwh_year: 2 }), row('b', { kwh_year: 1, weight_kg: 2 })],
    front: 'a b',
  },
  {
    of: 'a weight that only the worse does not know',
    rows: [row('a', { kwh_year: 2, weight_kg: 2 }), row('b', { kwh_year: 1 })],
    front: 'a',
  },
  { of: 'excluded', rows: [row('a', { kwh_year: 2, excluded: 'no' }), row('b', { kwh_year: 1 })], front: 'b' },
  { of: 'no energy known', rows: [row('a', {}), row('b', { kwh_year: 1 })], front: 'b' },
  {
    of: 'three of which one betters another',
    rows: [
      row('a', { kwh_year: 3, weight_kg: 9 }),
      row('b', { kwh_year: 2, weight_kg: 5 }),
      row('c', { kwh_year: 1, weight_kg: 6 }),
    ],
    front: 'a b',
  },
])('the front: $of', ({ rows, front: expected }) => expect(front(rows)).toBe(expected))

test('most energy first, then the least price of it, then by name; the excluded last', () => {
  const rows = [
    row('out', { kwh_year: 9, excluded: 'no' }),
    row('gone', { kwh_year: 8, excluded: 'no' }),
    row('unknown', {}),
    row('z', { kwh_year: 2, price_per_kwh: usd(1) }),
    row('y', { kwh_year: 2, price_per_kwh: usd(2) }),
    row('x', { kwh_year: 2, price_per_kwh: usd(2) }),
    row('top', { kwh_year: 3 }),
  ]
  expect(bestFirst(rows).map((one) => one.panel)).toEqual(['top', 'z', 'x', 'y', 'unknown', 'out', 'gone'])
})

test('figures of the panels that lie there, by hand', () => {
  const { of, rows } = compared(system())
  expect(rows.map((one) => one.panel)).toEqual(['small', 'large'])
  // 2.6 x 1.7 m takes 2 columns of 3 panels of 1.19 x 0.54 m; a string of 100 V takes at most 4
  const large = of('large')
  expect(large).toMatchObject({ count: 6, proven: true, excluded: null, front: true, not_known: [] })
  expect(large.strings).toMatchObject({ controller: 'c100' })
  expect(large.strings!.in_series * large.strings!.in_parallel).toBe(6)
  expect(large.pmax_stc_w).toBe(660)
  expect(large.weight_kg).toBeCloseTo(6 * 2.2, 9)
  expect(large.price).toEqual({ amount: 6 * 289, currency: 'USD' })
  expect(large.warranty_years).toBe(5)
  const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
  const year = large.wh_day!.reduce((sum, wh, m) => sum + (wh * days[m]!) / 1000, 0)
  expect(large.kwh_year).toBeCloseTo(year, 9)
  expect(large.price_per_kwh!.amount).toBeCloseTo((6 * 289) / (year * 5 * 0.8), 9)
})

test('what a record lacks is named, and its warranty costs nothing per energy', () => {
  const { of } = compared(system(), { 'bare.panel.yaml': panel({ pmax: 140 }) })
  const bare = { price: null, weight_kg: null, price_per_kwh: null, warranty_years: null }
  expect(of('bare')).toMatchObject({ ...bare, not_known: ['price', 'weight', 'output warranty'] })
})

test('what the figures were worked out without is named, and what is not known is no reason that a controller gives', () => {
  const { of } = compared(system(', curvature: 10 deg'), {
    'no-pmax.panel.yaml': panel({ more: priced }).replace('pmax: 110 W, ', ''),
    'no-isc.panel.yaml': panel({ more: priced }).replace(/, isc: [\d.]+ A/, ''),
    'no-beta.panel.yaml': panel({ more: priced }).replace('voc: -0.29 %/°C, ', ''),
    'no-voc.panel.yaml': panel({ more: priced }).replace('voc: 22.1 V, ', ''),
    'bends.panel.yaml': panel({ more: `${priced}\nlimits: { bend: 30 deg }` }),
    'rigid.panel.yaml': panel({ more: priced }).replace('flexible', 'rigid'),
  })
  expect(of('large').not_known).toEqual(['bend limit'])
  expect(of('no-pmax').not_known).toEqual(['Pmax', 'bend limit'])
  expect(of('no-isc').not_known).toEqual(['Isc', 'bend limit'])
  expect(of('no-beta').not_known).toEqual(['Voc coefficient', 'bend limit'])
  expect(of('no-voc').excluded).toBe('its Voc is not known, so no string can be checked against a controller')
  expect(of('bends').not_known).toEqual([])
  expect(of('rigid').not_known).toEqual([])
})

test('a panel whose size is not known, that fits nowhere, or that no controller takes is excluded', () => {
  const { of, rows } = compared(system(), {
    'odd.panel.yaml': panel().replace(/size: .*\n/, ''),
    'long.panel.yaml': panel({ length: 3000 }),
    'high.panel.yaml': panel().replace('voc: 22.1 V', 'voc: 120 V').replace('vmp: 18.6 V', 'vmp: 100 V'),
  })
  expect(of('odd')).toMatchObject({ excluded: 'its size is not known', not_known: ['length', 'width'] })
  expect(of('long')).toMatchObject({ count: 0, proven: true, excluded: 'none fits on the surface, either way round' })
  expect(of('high').excluded).toBe('no string of it stays within the voltage and current limits of any controller')
  expect(of('high').strings).toBeNull()
  expect(rows.slice(0, 2).every(({ excluded }) => excluded === null)).toBe(true)
})

test('a controller of the library takes what the own one does not, the cheapest first', () => {
  const high = panel().replace('voc: 22.1 V', 'voc: 120 V').replace('vmp: 18.6 V', 'vmp: 100 V')
  const at = (price: number) => `${controller(250)}price: { amount: ${price} USD }\n`
  const some = { 'high.panel.yaml': high, 'dear.controller.yaml': at(900), 'good.controller.yaml': at(300) }
  expect(compared(system(), some).of('high').strings?.controller).toBe('good')
  expect(compared(system(), some).of('large').strings?.controller).toBe('c100')
})

test('other arrays keep their weight, and this one is counted as it would be', () => {
  const second = system('', '{ weight: 30 kg }').replace(
    'battery: { battery',
    `  - id: bow
    panels: [{ panel: 'large', count: 8, surface: bonnet }]
    wiring: { in_series: 2, in_parallel: 4 }
    controller: c100
battery: { battery`,
  )
  // 8 x 2.2 kg lie on the bonnet: five more are below 30 kg, and four or five of them can be wired
  const { of } = compared(second)
  expect(of('large').weight_kg).toBeLessThanOrEqual(30 - 8 * 2.2)
  expect(of('large').weight_kg).toBeGreaterThanOrEqual(4 * 2.2)
  expect(of('large').count).toBe(6)
})
