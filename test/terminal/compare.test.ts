import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { scratch, wattproof } from './run.ts'

const panels = 'samples/library/panels'
const rows = (args: readonly string[], cwd = '.') =>
  JSON.parse(wattproof(['compare', ...args, '--format', 'json'], { cwd }).out).rows

const bare = (more = '') => `format: 1
name: Bare 100
construction: flexible
stc: { pmax: 100 W, vmp: 18 V, imp: 5.56 A, voc: 22 V, isc: 6 A }
size: { length: 1000 mm, width: 500 mm }
${more}`

// by hand from the record: 110 W, 1190 x 540 mm, -0.38 %/°C, NOCT 46 °C, 2.2 + 1.4 kg, 289 USD; at 35 °C cells reach
// 35 + (26 + X) / 0.8 °C, X by mounting 18, 11, 2 and 0 K
test('the five questions of a panel', () => {
  const [row] = rows([`${panels}/tern-110.panel.yaml`])
  const hot = (x: number) => 110 * (1 - 0.0038 * (35 + (26 + x) / 0.8 - 25))
  expect(Object.keys(row)).toEqual([
    'panel',
    'efficiency',
    'efficiency_printed',
    'pmax_hot_w',
    'w_per_kg',
    'w_per_kg_framed',
    'price_per_watt',
    'price_per_kwh',
    'warranty',
    'surface',
    'not_known',
  ])
  expect(row.efficiency).toBeCloseTo(110 / (1000 * 1.19 * 0.54), 9)
  expect(row.efficiency_printed).toBeCloseTo(0.171, 9)
  expect(Object.keys(row.pmax_hot_w)).toEqual(['bonded', 'canvas', 'standoff', 'open rack'])
  ;[18, 11, 2, 0].forEach((x, i) => expect(Object.values(row.pmax_hot_w)[i]).toBeCloseTo(hot(x), 9))
  expect(row.w_per_kg).toBeCloseTo(110 / 2.2, 9)
  expect(row.w_per_kg_framed).toBeCloseTo(110 / 3.6, 9)
  expect(row.price_per_watt.amount).toBeCloseTo(289 / 110, 9)
  expect(row.price_per_watt.currency).toBe('USD')
  expect(row.warranty).toEqual({
    output_years: 5,
    at_least: 0.8,
    workmanship_years: 2,
    exclusions: ['uv', 'foot traffic', 'salt water'],
  })
  expect(row.not_known).toEqual([])
  // 5 years at 80 % are as much as the 4 years that are expected
  expect(row.price_per_kwh.expected.amount).toBeCloseTo(row.price_per_kwh.warranted.amount, 9)
})

test('the settings say how long panels last', () => {
  const climate = 'samples/systems/climates/example-bay.climate.yaml'
  const files = {
    'a.panel.yaml': bare('price: { amount: 200 USD }\ntemperature_coefficients: { pmax: -0.4 %/°C }'),
    'example-bay.climate.yaml': readFileSync(climate, 'utf8'),
  }
  const settings = 'format: 1\nsite: { climate: example-bay }\n'
  const usual = rows(['.'], scratch({ ...files, 'wattproof.yaml': settings }))[0].price_per_kwh.expected.amount
  const set = scratch({ ...files, 'wattproof.yaml': `${settings}expected_life: { flexible: 2 years }\n` })
  expect(rows(['.'], set)[0].price_per_kwh.expected.amount).toBeCloseTo(2 * usual, 9)
  const { out } = wattproof(['compare', '.'], { cwd: set })
  expect(out).toContain('2 years')
  expect(out).not.toContain('ommon practice')
})

test('what is not known is null, named, shown as not known, and last either way', () => {
  const cwd = scratch({
    'a.panel.yaml': bare(),
    'b.panel.yaml': bare('weight: 2 kg\nprice: { amount: 300 USD }'),
    'c.panel.yaml': bare('weight: 4 kg\nprice: { amount: 150 USD }'),
  })
  const ids = (column: string) => rows(['.', '--sort', column], cwd).map(({ panel }: { panel: string }) => panel)
  expect(ids('w_per_kg')).toEqual(['b', 'c', 'a'])
  expect(ids('price_per_watt')).toEqual(['c', 'b', 'a'])
  const [a] = rows(['a.panel.yaml'], cwd)
  expect(a).toMatchObject({ w_per_kg: null, w_per_kg_framed: null, price_per_watt: null, surface: null })
  expect(a.not_known).toEqual(expect.arrayContaining(['weight', 'price', 'output warranty', 'front cover']))
  const csv = wattproof(['compare', '.', '--format', 'csv', '--columns', 'w_per_kg,price_per_watt'], { cwd }).out
  expect(csv).toBe('panel,w_per_kg,price_per_watt\na,not known,not known\nb,50,3\nc,25,1.5\n')
  const markdown = wattproof(['compare', '.', '--format', 'markdown', '--columns', 'w_per_kg'], { cwd }).out
  expect(markdown).toBe(
    '| panel | panel alone |\n| --- | --- |\n| a | not known |\n| b | 50.0 W/kg |\n| c | 25.0 W/kg |\n',
  )
})

test('filters take numbers in the unit shown, and words', () => {
  const ids = (...filters: string[]) =>
    rows([panels, ...filters.flatMap((one) => ['--filter', one])]).map(({ panel }: { panel: string }) => panel)
  expect(ids('efficiency >= 21 %')).toEqual(['crane-430', 'egret-390'])
  expect(ids('surface = etfe', 'w_per_kg > 50')).toEqual(['avocet-120', 'avocet-50'])
  expect(ids('w_per_kg_framed > 0')).toEqual(['tern-110'])
  expect(ids('efficiency >= 2.1e1')).toEqual(['crane-430', 'egret-390'])
  expect(ids('expected_life >= 20 years')).toContain('crane-430')
})

test.each([
  ['--sort', 'weightless'],
  ['--columns', 'efficiency,weightless'],
  ['--filter', 'weightless > 3'],
  ['--filter', 'efficiency'],
  ['--filter', 'efficiency > much'],
  ['--filter', 'surface > 3'],
  ['--filter', 'w_per_kg > 20 W/lb'],
  ['--filter', 'efficiency > 20,5'],
  ['--filter', 'hot_bonded > 1,000 W'],
])('%s %s could not run and says why', (option, value) => {
  const { code, err, out } = wattproof(['compare', panels, option, value])
  expect([code, out]).toEqual([2, ''])
  expect(err).toMatch(/weightless|write a column|holds|is in W\/kg/)
})

test.each([60, 80, 140])('the text fits a terminal of %i characters', (width) => {
  const { out } = wattproof(['compare', panels], { env: { COLUMNS: String(width) } })
  expect(Math.max(...out.split('\n').map((line) => [...line].length))).toBeLessThanOrEqual(width)
  expect(out.replace(/\s+/g, ' ')).toContain(
    'Common practice, no source: bonded flexible panels last one to five years',
  )
})

test('an expected life of common practice is marked in every format', () => {
  const of = (...args: string[]) => wattproof(['compare', panels, ...args]).out
  expect(JSON.parse(of('--format', 'json')).notes).toEqual([expect.stringMatching(/^Common practice, no source/)])
  expect(of('--format', 'csv', '--columns', 'expected_life,expected_life_from')).toMatch(
    /^tern-110,4,common practice$/m,
  )
  expect(of('--format', 'markdown')).toMatch(/^Common practice, no source/m)
})

test('no text of a record is a formula in CSV, or obeyed by a terminal', () => {
  const cwd = scratch({
    'a.panel.yaml': bare('warranty: { exclusions: [\'=1+1\', "\\e[2J"] }'),
    '=b.panel.yaml': bare(),
  })
  const csv = wattproof(['compare', '.', '--format', 'csv', '--columns', 'exclusions'], { cwd }).out
  expect(csv).toMatch(/^'=b,none named$/m)
  expect(csv).toMatch(/^a,"'=1\+1, \\u001b\[2J"$/m)
  for (const format of ['text', 'json', 'csv', 'markdown'])
    expect(wattproof(['compare', '.', '--format', format], { cwd }).out, format).not.toContain('\u001b')
})

test('every example of the help runs', () => {
  const help = wattproof(['compare', '--help']).out
  const examples = [...help.matchAll(/^ {2}wattproof (compare .+)$/gm)].map(([, command]) => command!)
  expect(examples.length).toBeGreaterThanOrEqual(7)
  const files = {
    'boat.system.yaml': readFileSync('samples/systems/boat.system.yaml', 'utf8').replaceAll(
      /puffin-115|skua-110/g,
      'tern-110',
    ),
    'panels/tern-110.panel.yaml': readFileSync(`${panels}/tern-110.panel.yaml`, 'utf8'),
    'panels/heron-100.panel.yaml': readFileSync(`${panels}/heron-100.panel.yaml`, 'utf8'),
    'tern-110.panel.yaml': readFileSync(`${panels}/tern-110.panel.yaml`, 'utf8'),
    'heron-100.panel.yaml': readFileSync(`${panels}/heron-100.panel.yaml`, 'utf8'),
    'offers/new.panel.yaml': bare(),
  }
  for (const name of [
    'controllers/example-mppt-30.controller',
    'batteries/example-lfp-100.battery',
    'climates/example-bay.climate',
  ])
    Object.assign(files, { [`${name.split('/')[1]}.yaml`]: readFileSync(`samples/systems/${name}.yaml`, 'utf8') })
  for (const example of examples) {
    const args = [...example.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare!)
    const { code, out, err } = wattproof(args, { cwd: scratch(files) })
    expect(code, err).toBe(0)
    if (!example.includes('csv')) expect(err, example).toBe('')
    expect(out, example).not.toBe('')
  }
})

test('a folder without panels could not run', () => {
  const { code, err } = wattproof(['compare', 'samples/systems/batteries'])
  expect(code).toBe(2)
  expect(err).toContain('no panel record')
})
