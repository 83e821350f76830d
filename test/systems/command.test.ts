import { expect, test } from 'vitest'
import { cautionsIn } from '../../server/src/review/cautions.ts'
import { wattproof } from '../terminal/run.ts'

const boat = 'samples/systems/boat.system.yaml'
const hazard = 'samples/systems/hazards/four-in-series.system.yaml'

test('the figures come as the one document that is promised', () => {
  const { out, code } = wattproof(['review', boat, '--format', 'json'])
  const review = JSON.parse(out)
  expect(code).toBe(0)
  expect(Object.keys(review)).toEqual([
    'version',
    'system',
    'arrays',
    'battery',
    'months',
    'year',
    'measurements',
    'not_checked',
    'totals',
    'margins',
    'too_large',
    'findings',
  ])
  expect([review.version, review.system, review.findings]).toEqual([1, 'boat', []])
  expect(Object.keys(review.arrays[0])).toEqual([
    'id',
    'pmax_stc_w',
    'pmax_hot_w',
    'voc_cold_v',
    'vmp_hot_v',
    'isc_design_a',
    'weight_kg',
    'price',
    'cable',
  ])
  expect(Object.keys(review.arrays[0].cable)).toEqual(['drop_pct', 'resistance_ohm', 'current_a', 'ampacity_a'])
  expect(Object.keys(review.battery)).toEqual(['usable_wh', 'autonomy_days', 'charge_rate_c'])
  expect(review.months.map((m: { month: number }) => m.month)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12])
  expect(Object.keys(review.months[0])).toEqual([
    'month',
    'sun_kwh_m2_day',
    'yield_wh_day',
    'load_wh_day',
    'lowest_soc',
    'unserved_wh_day',
  ])
})

test('the document has the totals, every limit and its margin, and whether all is far too large', () => {
  const {
    totals,
    margins,
    too_large: large,
  } = JSON.parse(wattproof(['review', 'samples/systems/cabin.system.yaml', '--format', 'json']).out)
  expect(totals).toMatchObject({
    pmax_stc_w: 1720,
    weight_kg: 86,
    price: { amount: 3200, currency: 'USD' },
    arrays: [
      { id: 'south', panels: [{ name: 'Grebe 430', count: 4 }], wiring: '2S2P', controller: 'Example MPPT 150/60' },
    ],
    battery: { name: 'Example AGM 220', count: 4, wiring: '2S2P' },
  })
  const cold = margins.find(({ what }: { what: string }) => what === 'south: cold voltage, controller')
  expect(cold).toMatchObject({ limit: 150, unit: 'V', at_least: false, kept: true })
  expect(cold.value).toBeCloseTo(87, 0)
  expect(large).toContain('Far larger than its loads')
})

test('what is unsafe makes the exit code 1 and stands before the figures', () => {
  const { out, code } = wattproof(['review', hazard])
  expect(code).toBe(1)
  expect(out.replace(/\s+/g, ' ')).toContain(
    "ERROR, line 23: 4 in series should be 2 (52.9 V at -5 °C, 2 strings): 106 V at -5 °C exceeds the controller's 100 V.",
  )
  expect(out.indexOf('exceeds')).toBeLessThan(out.indexOf('Arrays'))
})

test('every review prints every caution, and what was not checked', () => {
  const words = wattproof(['review', boat]).out.replace(/\s+/g, ' ')
  for (const caution of cautionsIn()) expect(words).toContain(caution)
  expect(words).toContain('Not checked, which is not the same as in order - ')
  for (const line of ['How cold the battery gets', 'Voltage rating of fuses']) expect(words).toContain(`- ${line}`)
})

test('a panel is no system', () => {
  const { err, code } = wattproof(['review', 'samples/systems/panels/puffin-115.panel.yaml'])
  expect([code, err]).toEqual([2, expect.stringContaining('is no system description')])
})
