import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { siteOf } from '../../server/src/values/site.ts'
import { valuesOf } from './panel-of.ts'

const tern = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8')
const values = valuesOf(tern)
const numberOf = (id: string, of = values) => of.get(id)?.value ?? NaN

/** Within 0.1 %. */
const near = (value: number, by: number) => expect(Math.abs(value / by - 1)).toBeLessThan(0.001)

// k = (46 + 18 - 20) / 800 = 0.055 for a bonded panel, so a cell at 35 °C air runs at 35 + 0.055 x 1000 = 90 °C
test.each([
  { id: 'area', unit: 'm2', by: 1.19 * 0.54 },
  { id: 'efficiency', unit: '1', by: 110 / (1000 * 0.6426) },
  { id: 'fill_factor', unit: '1', by: 110 / (22.1 * 6.31) },
  { id: 'power_per_area', unit: 'W/m2', by: 171.18 },
  { id: 'power_per_weight', unit: 'W/kg', by: 110 / (2.2 + 1.4) },
  { id: 'weight_per_area', unit: 'kg/m2', by: 2.2 / 0.6426 },
  { id: 'price_per_watt', unit: 'USD/W', by: 289 / 110 },
  { id: 'cell_temperature_hot', unit: 'degC', by: 35 + 0.055 * 1000 },
  { id: 'pmax_hot', unit: 'W', by: 110 * (1 - 0.0038 * 65) },
  { id: 'voc_cold', unit: 'V', by: 22.1 * (1 + 0.0029 * 35) },
  { id: 'isc_design', unit: 'A', by: 7.8875 },
  { id: 'voc_per_cell', unit: 'V', by: 22.1 / 36 },
])('Tern 110: $id', ({ id, unit, by }) => {
  near(numberOf(id), by)
  expect(values.get(id)?.unit).toBe(unit)
})

test('ids and their order are what scripts read: a new value is added here', () => {
  expect([...values.keys()].slice(0, 13)).toEqual(
    [
      'area',
      'efficiency',
      'fill_factor',
      'power_per_area',
      'power_per_weight',
      'weight_per_area',
      'price_per_watt',
    ].concat(['cell_temperature_hot', 'pmax_hot', 'voc_cold', 'isc_design', 'voc_per_cell', 'price_per_kwh']),
  )
})

test('a US sheet: inches with fractions, pounds, per cent per degree Fahrenheit', () => {
  const us = valuesOf(`format: 1
name: Plover 100
stc: { pmax: 100 W, vmp: 18 V, imp: 5.56 A, voc: 21.6 V, isc: 5.92 A }
temperature_coefficients: { pmax: -0.22 %/°F, voc: -0.17 %/°F }
size: { length: 46 1/2 in, width: 1.75 ft }
weight: 4.8 lb
`)
  near(numberOf('area', us), 46.5 * 0.0254 * 21 * 0.0254)
  near(numberOf('power_per_weight', us), 100 / (4.8 * 0.45359237))
  near(numberOf('voc_cold', us), 21.6 * (1 + 0.0017 * 1.8 * 35))
})

test.each([
  { typed: 'pmax: -0.418 W/K, voc: -64 mV/K', pmax: 110 - 0.418 * 65, voc: 22.1 + 0.064 * 35 },
  { typed: 'pmax: -0.0038 1/K, voc: -0.064 V/°C', pmax: 110 - 0.418 * 65, voc: 22.1 + 0.064 * 35 },
  { typed: 'pmax: -3800 ppm/K, voc: -0.29 %/K', pmax: 110 - 0.418 * 65, voc: 22.1 + 0.06409 * 35 },
])('coefficients as $typed', ({ typed, pmax, voc }) => {
  const own = valuesOf(tern.replace(/temperature_coefficients: \{.*\}/, `temperature_coefficients: { ${typed} }`))
  near(numberOf('pmax_hot', own), pmax)
  near(numberOf('voc_cold', own), voc)
})

test('only what is missing is named for the energy of a year', () => {
  const place = 'the climate of a place (site.climate in wattproof.yaml)'
  const coefficients = /^temperature_coefficients:\n(?: .*\n)+/m
  const missing = (yaml: string, id: string) => valuesOf(yaml).get(id)!.missing
  expect(missing(tern, 'energy_per_year')).toEqual([place])
  expect(missing(tern.replace(coefficients, ''), 'energy_per_year')).toEqual([place, 'Pmax coefficient'])
  const unwarranted = tern.replace(/^ {2}output:.*\n/m, '')
  expect(missing(unwarranted, 'price_per_kwh')).toEqual([place, 'output warranty'])
})

test.each([
  { without: /^weight:.*\n/m, lost: { power_per_weight: ['weight'], weight_per_area: ['weight'] } },
  {
    without: /^temperature_coefficients:\n(?: .*\n)+/m,
    lost: { pmax_hot: ['Pmax coefficient'], voc_cold: ['Voc coefficient'] },
  },
  { without: /, in_series: 36/, lost: { voc_per_cell: ['cells in series'] } },
  { without: /^price:.*\n/m, lost: { price_per_watt: ['price'] } },
  {
    without: /, width: 540 mm/,
    lost: { area: ['width'], efficiency: ['width'], power_per_area: ['width'], weight_per_area: ['width'] },
  },
  { without: /^ {2}isc:.*\n/m, lost: { fill_factor: ['Isc'], isc_design: ['Isc'] } },
])('without $without a value is not known, and says what is missing', ({ without, lost }) => {
  const left = valuesOf(tern.replace(without, ''))
  for (const [id, missing] of Object.entries(lost))
    expect(left.get(id)).toMatchObject({ value: null, text: 'not known', missing })
  for (const [id, { value }] of left)
    if (!(id in lost) && values.get(id)!.value !== null) expect(value, id).not.toBeNull()
})

test.each([
  { construction: 'flexible', mounting: undefined, hot: 90 }, // X 18
  { construction: 'rigid', mounting: undefined, hot: 67.5 }, // X 0
  { construction: 'folding', mounting: undefined, hot: 67.5 },
  { construction: 'rigid', mounting: 'standoff', hot: 70 }, // X 2
  { construction: 'flexible', mounting: 'canvas', hot: 81.25 }, // X 11
  { construction: 'flexible', mounting: 'open rack', hot: 67.5 },
  { construction: 'rigid', mounting: 'bonded', hot: 90 },
] as const)('$construction, $mounting: 35 + (46 + X - 20) / 800 x 1000 = $hot', ({ construction, mounting, hot }) => {
  const site = { ...siteOf(undefined), ...(mounting && { mounting }) }
  near(
    numberOf(
      'cell_temperature_hot',
      valuesOf(tern.replace('construction: flexible', `construction: ${construction}`), site),
    ),
    hot,
  )
})

test('NOCT that is not given is assumed to be 46 °C and says so', () => {
  const hot = valuesOf(tern.replace(/^noct:.*\n/m, '')).get('cell_temperature_hot')!
  near(hot.value!, 90)
  expect(hot.inputs.find(({ name }) => name === 'NOCT')).toMatchObject({ text: '46 °C, assumed', pointer: null })
})

test('the site decides hot and cold', () => {
  const own = valuesOf(tern, { hottest: 45, coldest: -25 })
  near(numberOf('pmax_hot', own), 110 * (1 - 0.0038 * (45 + 55 - 25)))
  near(numberOf('voc_cold', own), 22.1 * (1 + 0.0029 * 50))
})

test.each([
  ['289 EUR', 'EUR/W'],
  ['£289', 'GBP/W'],
])('a price of %s is in %s', (amount, unit) => {
  const own = valuesOf(tern.replace('289 USD', amount)).get('price_per_watt')!
  expect(own).toMatchObject({ unit, missing: [] })
  near(own.value!, 289 / 110)
})

test('each value explains itself with its inputs as they were typed', () => {
  expect(values.get('voc_cold')).toMatchObject({
    formula: 'Voc x (1 + Voc coefficient x (T cold - 25 °C)), the cell as cold as the air',
    inputs: [
      { name: 'Voc', text: '22.1 V', value: 22.1, unit: 'V', pointer: '/stc/voc' },
      { name: 'Voc coefficient', text: '-0.29 %/°C', unit: '1/K', pointer: '/temperature_coefficients/voc' },
      { name: 'T cold', text: '-10 °C', value: -10, unit: 'degC', pointer: null },
    ],
  })
  for (const { id, formula, source, pointer, text } of values.values()) {
    expect(
      [formula, source, text].every((said) => said.length > 3),
      id,
    ).toBe(true)
    expect(pointer).toMatch(/^\/[a-z_/]+$/)
  }
})

test.each(['pmax: 0 W', 'pmax: -110 W'])('%s is not computed with', (typed) => {
  const lost = [...valuesOf(tern.replace('pmax: 110 W', typed))].filter(([, { missing }]) => missing.includes('Pmax'))
  expect(lost.map(([id]) => id)).toEqual([
    'efficiency',
    'fill_factor',
    'power_per_area',
    'power_per_weight',
    'price_per_watt',
    'pmax_hot',
    'price_per_kwh',
    'energy_per_year',
  ])
})
