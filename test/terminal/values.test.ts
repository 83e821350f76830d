import { expect, test } from 'vitest'
import { wattproof } from './run.ts'

const path = 'samples/library/panels/tern-110.panel.yaml'
const values: { id: string; value: number | null; unit: string; inputs: unknown[] }[] = JSON.parse(
  wattproof(['values', path, '--format', 'json']).out,
).values

// by hand from the record: 110 W, 18.6 V, 5.92 A, 22.1 V, 6.31 A, -0.38 and -0.29 %/°C, NOCT 46 °C, 1190 x 540 mm, 2.2 + 1.4 kg,
// 289 USD, with the assumptions of the settings: 35 and -10 °C, bonded (18 K above an open rack)
test.each([
  ['area', 0.6426, 'm2'],
  ['efficiency', 0.171179, '1'],
  ['fill_factor', 0.788809, '1'],
  ['power_per_area', 171.179, 'W/m2'],
  ['power_per_weight', 30.5556, 'W/kg'],
  ['weight_per_area', 3.42359, 'kg/m2'],
  ['price_per_watt', 2.62727, 'USD/W'],
  ['cell_temperature_hot', 90, 'degC'],
  ['pmax_hot', 82.83, 'W'],
  ['voc_cold', 24.34315, 'V'],
  ['isc_design', 7.8875, 'A'],
  ['voc_per_cell', 0.613889, 'V'],
])('%s is %f %s', (id, expected, unit) => {
  const found = values.find((value) => value.id === id)
  expect(found?.unit).toBe(unit)
  expect(Math.abs((found?.value ?? NaN) / expected - 1)).toBeLessThan(0.0001)
  expect(found?.inputs.length).toBeGreaterThan(0)
})

test.each([40, 80, 100])('no line is wider than a terminal of %i characters, and nothing is lost', (width) => {
  const { out } = wattproof(['values', path], { env: { COLUMNS: String(width) } })
  const words = (text: string) => text.split(/\s+/).filter((word) => word !== '')
  expect(out.split('\n').filter((line) => [...line].length > width)).toEqual([])
  // but for the head of the table
  expect(words(out)).toEqual(words(wattproof(['values', path]).out).slice(4))
})

test('the table has a line for each value, with formula and inputs', () => {
  const lines = wattproof(['values', path]).out.trimEnd().split('\n')
  expect(lines).toHaveLength(values.length + 1)
  expect(lines.find((line) => line.startsWith('efficiency'))).toMatch(/17\.1.? ?%.*Pmax.*Pmax 110 W/)
})
