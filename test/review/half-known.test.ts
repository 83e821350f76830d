// What is known in part: no rule judges what it cannot know, no fix is guessed, nothing breaks.
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { measuredOf } from '../../server/src/review/measured/measured.ts'
import { resolved } from './resolved.ts'

const panel =
  '{ stc: { pmax: 110 W, vmp: 18.6 V, imp: 5.92 A, voc: 22.1 V, isc: 6.31 A }, cells: { technology: mono, in_series: 36 }, temperature_coefficients: { pmax: -0.38 %/°C, voc: -0.29 %/°C, isc: 0.05 %/°C } }'
const parts = {
  array: 'wiring: { in_series: 2, in_parallel: 1 }',
  panel,
  cable: 'size: 6 mm2, length: 5 m, insulation: 90 °C',
  output: 'fuse: 40 A, cable: { size: 10 mm2, length: 1 m, insulation: 90 °C }',
  bank: 'fuse: 100 A, cable: { size: 25 mm2, length: 1 m, insulation: 90 °C }',
  loads: '{ name: heater, power: 600 W, hours: 1 }',
}

/** Rules that find something, with what they offer. */
function found(change: Partial<typeof parts>): readonly string[] {
  const at = { ...parts, ...change }
  const library = createLibrary()
  library.put(
    'own.system.yaml',
    `format: 1
name: Half known
kind: cabin
site: { coldest: -10 °C, hottest: 30 °C }
arrays:
  - id: main
    panels: [{ panel: ${at.panel}, count: 2 }]
    ${at.array}
    controller: { type: mppt, input: { max_voltage: 100 V, max_short_circuit_current: 20 A }, output: { max_current: 30 A, battery_voltages: [12 V] } }
    cable: { ${at.cable} }
    output: { ${at.output} }
battery:
  battery: { chemistry: lifepo4, nominal_voltage: 12.8 V, capacity: { amount: 200 Ah }, charge: { max_current: 100 A }, discharge: { max_current: 300 A } }
  place: inside
  kept_above: 5 °C
  ${at.bank.replace(', cable', '\n  cable')}
loads: [${at.loads}]
`,
  )
  const { findings } = checkFile(library, 'own.system.yaml', { today: '2026-11-25', years: 1 })!
  return findings
    .filter(({ rule }) => rule !== 'missing-field')
    .map(({ rule, corrections }) => [rule, ...corrections.map(({ text }) => text)].join(': '))
}

test.each<[what: string, change: Partial<typeof parts>, rules: readonly string[]]>([
  ['all is known', {}, []],
  [
    'a battery cable below the table',
    { bank: 'fuse: 100 A, cable: { size: 0.5 mm2, length: 0.1 m, insulation: 90 °C }' },
    [],
  ],
  [
    'an output cable below the table',
    { output: 'fuse: 40 A, cable: { size: 0.5 mm2, length: 0.1 m, insulation: 90 °C }' },
    [],
  ],
  ['an array cable below the table', { cable: 'size: 0.5 mm2, length: 0.1 m, insulation: 90 °C' }, []],
  [
    'a thin battery cable without a fuse',
    { bank: 'cable: { size: 10 mm2, length: 1 m, insulation: 60 °C }' },
    ['battery-cable-thin: 25 mm2', 'battery-fuse-missing'],
  ],
  [
    'more current than any fuse carries',
    { loads: '{ name: forge, power: 20000 W, hours: 1 }' },
    ['battery-fuse-low', 'battery-cable-thin'],
  ],
  ['no cable at the battery', { bank: 'fuse: 20 A' }, ['battery-fuse-low: 70 A']],
  ['no Voc', { panel: panel.replace('voc: 22.1 V, ', '') }, []],
  ['no ratings', { panel: '{ weight: 2 kg }' }, []],
  ['a load without hours', { loads: '{ name: heater, power: 600 W }' }, ['load-without-energy']],
])('%s', (_, change, rules) => {
  expect(found(change)).toEqual(rules)
})

test('of strings measured in two ways those with their power say what is left of it', () => {
  const day = (
    n: number,
    power: number,
  ) => `{ date: ${2020 + n}-06-14, array: main, irradiance: 1000 W/m2, cell_temperature: 25 °C, strings: [
    { string: 1, voc: 22.1 V, isc: 6.31 A, vmp: ${(18.6 * power).toFixed(2)} V, imp: 5.92 A }, { string: 2, voc: 22.1 V, isc: 6.31 A }] }`
  const system =
    resolved(`arrays: [{ id: main, panels: [{ panel: ${panel}, count: 2 }], wiring: { in_series: 1, in_parallel: 2 } }]
measurements: [${day(0, 1)}, ${day(3, 0.98)}]
`)
  const [{ points }] = measuredOf(system).trends as [ReturnType<typeof measuredOf>['trends'][number]]
  expect(points.map(({ from, strings }) => [from, strings.length])).toEqual([
    ['power', 1],
    ['power', 1],
  ])
  expect(points[1]!.left / points[0]!.left).toBeCloseTo(0.98, 2)
})
