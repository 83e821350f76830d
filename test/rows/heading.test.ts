import { expect, test } from 'vitest'
import { namedFieldOf } from '../../server/src/rows/heading.ts'
import { columnsOf } from '../../server/src/rows/columns.ts'
import { schemas } from '../../server/src/records/schemas.generated.ts'
import { phrase } from '../../server/src/wording/phrase.ts'

const panel = schemas.panel!

test.each([
  ['stc.voc', '/stc/voc'],
  ['/stc/voc', '/stc/voc'],
  ['Voc', '/stc/voc'],
  ['voc_v', '/stc/voc', 'V'],
  ['Voc (V)', '/stc/voc', 'V'],
  ['Isc [A]', '/stc/isc', 'A'],
  ['Pmax (Wp)', '/stc/pmax', 'W'],
  ['Power (W)', '/stc/pmax', 'W'],
  ['eff %', '/stc/efficiency', '%'],
  ['weight_lb', '/weight', 'lb'],
  ['Length (in)', '/size/length', 'in'],
  ['Height (mm)', '/size/thickness', 'mm'],
  ['Size (mm)', '/size', 'mm'],
  ['price_usd', '/price/amount', 'USD'],
  ['Preis (EUR)', '/price/amount', 'EUR'],
  ['tc_voc', '/temperature_coefficients/voc'],
  ['gamma', '/temperature_coefficients/pmax'],
  ['Temp. Coeff. of Pmax (%/°C)', '/temperature_coefficients/pmax', '%/°C'],
  ['NOCT (°C)', '/noct/temperature', '°C'],
  ['noct_pmax', '/noct/pmax'],
  ['Voc at NOCT', '/noct/voc'],
  ['Max. system voltage (V)', '/limits/system_voltage', 'V'],
  ['Max series fuse rating (A)', '/limits/series_fuse', 'A'],
  ['Kurzschlussstrom [A]', '/stc/isc', 'A'],
  ['Tensión de circuito abierto (V)', '/stc/voc', 'V'],
  ['Courant de court-circuit (A)', '/stc/isc', 'A'],
  ['Corrente di corto circuito (A)', '/stc/isc', 'A'],
  ['Kortsluitstroom (A)', '/stc/isc', 'A'],
  ['Brand', '/maker'],
  ['Hersteller', '/maker'],
  ['Model', '/name'],
])('%s is %s', (heading, pointer, unit?: string) => {
  const { pointer: found, unit: own } = namedFieldOf(heading, panel) ?? {}
  expect([found, own]).toEqual([pointer, unit])
})

test.each(['Shelf', 'Comment', 'Number of cells', 'L (mm)', 'Warranty', 'Voc (A)', 'Weight (V)', ''])(
  '%j names no field for certain',
  (heading) => expect(namedFieldOf(heading, panel)).toBeNull(),
)

test.each([
  ['controller', 'input.max_voltage', '/input/max_voltage'],
  ['battery', 'capacity.amount', '/capacity/amount'],
  ['climate', 'sun', '/sun'],
  ['system', 'site.climate', '/site/climate'],
] as const)('fields of a %s, too', (kind, heading, pointer) => {
  expect(namedFieldOf(heading, schemas[kind]!)?.pointer).toBe(pointer)
})

test('what a library says of a heading counts first; a field is taken once', () => {
  const columns = columnsOf(['U0', 'Shelf', 'Voc', 'file', 'Isc', 'I'], panel, {
    U0: { value: 'stc.voc V' },
    Shelf: { value: '-' },
    Isc: { value: 'stc.ics' },
    I: { value: 'weight' },
  })
  expect(columns.map(({ is }) => is)).toEqual(['field', 'left out', 'unknown', 'file', 'unknown', 'field'])
  expect(columns[0]).toMatchObject({ named: { pointer: '/stc/voc', unit: 'V' } })
  expect(columns[2]).toMatchObject({ because: phrase`it names the same field as ${'U0'}` })
  expect(columns[4]).toMatchObject({ because: phrase`columns of wattproof.yaml says ${'stc.ics'}, which is no field` })
})
