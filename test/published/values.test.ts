import { expect, test } from 'vitest'
import { siteOf } from '../../server/src/values/site.ts'
import { valuesOf } from '../values/panel-of.ts'

const villalva =
  'M. G. Villalva, J. R. Gazoli, E. Ruppert Filho, IEEE Trans. Power Electronics 24 (2009) 1198, ratings of the 200 W module of 54 cells, as quoted by open codes'
const poly = `format: 1
name: Poly 200
cells: { technology: poly, in_series: 54 }
stc: { pmax: 200.143 W, vmp: 26.3 V, imp: 7.61 A, voc: 32.9 V, isc: 8.21 A }
temperature_coefficients: { voc: -0.1230 V/K, isc: 0.0032 A/K }
size: { length: 1 m, width: 1 m }
`
const mono = (coefficient: string) => `format: 1
name: Mono
stc: { pmax: 110 W, vmp: 18.6 V, imp: 5.92 A, voc: 100 V, isc: 6.31 A }
temperature_coefficients: { voc: ${coefficient} }
size: { length: 1190 mm, width: 540 mm }
`
const table = 'NEC table 690.7(A), factor for crystalline silicon without a coefficient of its own (from memory)'

test.each([
  { id: 'fill_factor', source: villalva, yaml: poly, at: {}, theirs: 0.741, within: 0.0005 },
  { id: 'voc_per_cell', source: villalva, yaml: poly, at: {}, theirs: 0.6093, within: 0.0001 },
  // 32.9 V - 0.1230 V/K x 50 K; the paper draws its curves at 75 °C
  {
    id: 'voc_cold',
    source: `${villalva}; Voc at 75 °C by its equation`,
    yaml: poly,
    at: { coldest: 75 },
    theirs: 26.75,
    within: 0.005,
  },
  {
    id: 'isc_design',
    source: 'NEC 690.8(A)(1): 125 % of Isc (from memory)',
    yaml: poly,
    at: {},
    theirs: 10.2625,
    within: 0.0005,
  },
  // the table takes about -0.40 %/K at -10 °C and -0.385 %/K at -40 °C
  { id: 'voc_cold', source: table, yaml: mono('-0.40 %/K'), at: { coldest: -10 }, theirs: 114, within: 0.5 },
  { id: 'voc_cold', source: table, yaml: mono('-0.385 %/K'), at: { coldest: -40 }, theirs: 125, within: 0.5 },
  // at the temperature of the rating nothing is corrected
  {
    id: 'voc_cold',
    source: 'IEC 60904-3, ratings hold at 25 °C (from memory)',
    yaml: poly,
    at: { coldest: 25 },
    theirs: 32.9,
    within: 1e-9,
  },
])('$id: $source', ({ id, yaml, at, theirs, within }) => {
  const value = valuesOf(yaml, { ...siteOf(undefined), ...at }).get(id)?.value
  expect(Math.abs(value! - theirs)).toBeLessThanOrEqual(within)
})

test('with the coefficients of sheets (-0.24 to -0.33 %/K) the cold voltage stays below the table of the code', () => {
  const factors = [
    [-5, 1.12],
    [-10, 1.14],
    [-20, 1.18],
    [-40, 1.25],
  ] as const
  for (const [coldest, factor] of factors)
    for (const beta of ['-0.24 %/K', '-0.33 %/K']) {
      const cold = valuesOf(mono(beta), { ...siteOf(undefined), coldest }).get('voc_cold')!.value!
      expect(cold / 100).toBeGreaterThan(1)
      expect(cold / 100).toBeLessThan(factor)
    }
})

test.each([
  {
    source: 'Ross 1981: at 20 °C air and 800 W/m2 the cell is at NOCT, so k = (46 - 20)/800',
    mounting: 'open rack',
    k: 0.0325,
  },
  { source: 'M. K. Fuentes, SAND85-0330 (1987): 2 K more on spacers of about 75 mm', mounting: 'standoff', k: 0.035 },
  { source: 'M. K. Fuentes, SAND85-0330 (1987): 11 K more over about 25 mm of air', mounting: 'canvas', k: 0.04625 },
  { source: 'M. K. Fuentes, SAND85-0330 (1987): 18 K more without air', mounting: 'bonded', k: 0.055 },
] as const)('$mounting: $source', ({ mounting, k }) => {
  const sheet = poly.replace('size:', 'noct: { temperature: 46 °C }\nsize:')
  const hot = valuesOf(sheet, { hottest: 35, coldest: -10, mounting }).get('cell_temperature_hot')!.value!
  expect((hot - 35) / 1000).toBeCloseTo(k, 9)
})
