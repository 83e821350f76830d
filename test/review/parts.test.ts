import { expect, test } from 'vitest'
import { figuresOf } from '../../server/src/review/figures-of.ts'
import { partsOf } from '../../server/src/review/page/parts.ts'
import { totalsOf } from '../../server/src/review/totals.ts'
import { resolved } from './resolved.ts'

const panel = (price = '100 USD', more = '') =>
  `{ name: Tern 110, stc: { pmax: 110 W }, weight: 2.2 kg, mounting_frame: { weight: 0.8 kg }, price: { amount: ${price}, quoted_on: 2026-03-01, from: a shop }${more} }`
const controller = '{ name: Example 30, weight: 1 kg, price: { amount: 150 USD } }'
const battery =
  '{ name: Bank, chemistry: lifepo4, nominal_voltage: 12.8 V, capacity: { amount: 100 Ah }, weight: 11 kg, price: { amount: 300 USD } }'

const system = ({ first = panel(), second = panel(), kept = controller, bank = battery, wiring = '' } = {}) =>
  resolved(`
kind: boat
arrays:
  - id: port
    panels: [{ panel: ${first}, count: 2 }]
    wiring: { in_series: 2, in_parallel: 1 }
    controller: ${kept}
  - id: starboard
    panels: [{ panel: ${second}, count: 3 }]
    ${wiring}
    shares_controller_with: port
battery: { battery: ${bank}, in_series: 2, in_parallel: 3 }
`)

const totals = (one: ReturnType<typeof system>) => totalsOf(one, figuresOf(one))

test('a list of parts counts, weighs with frames and prices each; a shared controller is there once', () => {
  const { parts, weight_kg, price } = partsOf(system())
  const of = (weight: number, amount: number) => ({ weight_kg: weight, price: { amount, currency: 'USD' } })
  expect(parts).toEqual([
    { name: 'Tern 110', count: 2, ...of(3, 100), from: 'a shop', quoted_on: '2026-03-01' },
    { name: 'Tern 110', count: 3, ...of(3, 100), from: 'a shop', quoted_on: '2026-03-01' },
    { name: 'Example 30', count: 1, ...of(1, 150), from: null, quoted_on: null },
    { name: 'Bank', count: 6, ...of(11, 300), from: null, quoted_on: null },
  ])
  // 5 x 3 kg + 1 kg + 6 x 11 kg, and 5 x 100 + 150 + 6 x 300 USD
  expect(weight_kg).toBe(82)
  expect(price).toEqual({ amount: 2450, currency: 'USD' })
})

test('a part without price or weight leaves the sum open, and so do two currencies', () => {
  const without = partsOf(system({ bank: battery.replace(', weight: 11 kg, price: { amount: 300 USD }', '') }))
  expect([without.weight_kg, without.price, without.parts.at(-1)]).toEqual([
    null,
    null,
    { name: 'Bank', count: 6, weight_kg: null, price: null, from: null, quoted_on: null },
  ])
  expect(partsOf(system({ second: panel('100 EUR') })).price).toBeNull()
})

test('what no record names is called by its id, or by what it is', () => {
  const { parts } = partsOf(
    resolved(`
arrays:
  - panels: [{ panel: tern-110, count: 2 }, { panel: tern-110, count: 1 }, { panel: { weight: 1 kg }, count: 1 }]
    controller: example-30
  - panels: []
battery: { battery: bank-100 }
`),
  )
  expect(parts.map(({ name, count }) => [name, count])).toEqual([
    ['tern-110', 3],
    ['panel', 1],
    ['example-30', 1],
    ['controller', 1],
    ['bank-100', 1],
  ])
})

test('totals are those of all arrays, with the wiring of each', () => {
  expect(totals(system({ wiring: 'wiring: { in_series: 3, in_parallel: 1 }' }))).toEqual({
    pmax_stc_w: 550,
    weight_kg: 15,
    price: { amount: 2450, currency: 'USD' },
    parts_without_price: 0,
    arrays: [
      {
        id: 'port',
        panels: [{ name: 'Tern 110', count: 2 }],
        wiring: '2S1P',
        controller: 'Example 30',
        shares_controller_with: null,
      },
      {
        id: 'starboard',
        panels: [{ name: 'Tern 110', count: 3 }],
        wiring: '3S1P',
        controller: 'Example 30',
        shares_controller_with: 'port',
      },
    ],
    battery: { name: 'Bank', count: 6, wiring: '2S3P' },
  })
})

test('what a total lacks is null and not nothing', () => {
  const bare = totals(resolved('arrays: [{ id: main, panels: [{ panel: { stc: { voc: 22 V } }, count: 1 }] }]\n'))
  expect(bare).toEqual({
    pmax_stc_w: null,
    weight_kg: null,
    price: null,
    parts_without_price: expect.any(Number) as number,
    arrays: [
      {
        id: 'main',
        panels: [{ name: 'a panel', count: 1 }],
        wiring: null,
        controller: null,
        shares_controller_with: null,
      },
    ],
    battery: null,
  })
})
