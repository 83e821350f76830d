// A limit that is just met is enough; one that is missed by the last digit is not.
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'

/** Numbers that come out even: 2 strings of 2 panels of 20 V and 4 A, whose voltage does not rise in the cold. */
const whole: Readonly<Record<string, string>> = {
  'surface.curvature': '20 deg',
  'panel.bend': '20 deg',
  'panel.system_voltage': '40 V',
  'panel.series_fuse': '10 A',
  'array.string_fuse': '8 A',
  'controller.max_voltage': '60 V',
  'controller.max_short_circuit_current': '10 A',
  'controller.max_power': '185 W',
  'disconnect.current': '10 A',
  'disconnect.voltage': '40 V',
  'battery.max_current': '25 A',
  'bank.fuse': '62.5 A',
  'bank.each_fuse': '31.25 A',
  'bank.interrupting_rating': '10 kA',
  'inverter.power': '300 W',
  'inverter.surge': '500 W',
  'loads.dc': '600 W',
  'limits.weight': '8 kg',
  'limits.budget': '500 USD',
}

function found(change: Readonly<Record<string, string>> = {}): readonly string[] {
  const at = (name: string) => change[name] ?? whole[name]!
  const library = createLibrary()
  library.put('wattproof.yaml', 'format: 1\ncurrency: USD\n')
  library.put(
    'own.system.yaml',
    `format: 1
name: Just enough
kind: vehicle
site: { coldest: -10 °C, hottest: 30 °C }
surfaces: [{ id: roof, size: { length: 4 m, width: 1 m }, mounting: standoff, tilt: 0 deg, curvature: ${at('surface.curvature')} }]
arrays:
  - id: main
    panels: [{ panel: { construction: flexible, stc: { pmax: 60 W, vmp: 16 V, imp: 3.75 A, voc: 20 V, isc: 4 A }, temperature_coefficients: { pmax: -0.4 %/°C, voc: 0 %/°C, isc: 0 %/°C }, size: { length: 1000 mm, width: 450 mm }, weight: 2 kg, limits: { bend: ${at('panel.bend')}, system_voltage: ${at('panel.system_voltage')}, series_fuse: ${at('panel.series_fuse')} }, price: { amount: 75 USD } }, count: 4, surface: roof }]
    wiring: { in_series: 2, in_parallel: 2 }
    string_fuse: ${at('array.string_fuse')}
    controller: { type: mppt, input: { max_voltage: ${at('controller.max_voltage')}, max_short_circuit_current: ${at('controller.max_short_circuit_current')}, max_power: ${at('controller.max_power')} }, output: { max_current: 30 A, battery_voltages: [12 V] }, weight: 0.4 kg, price: { amount: 50 USD } }
    disconnect: { current: ${at('disconnect.current')}, voltage: ${at('disconnect.voltage')} }
battery:
  battery: { chemistry: lifepo4, nominal_voltage: 12.8 V, capacity: { amount: 50 Ah }, charge: { max_current: 25 A }, discharge: { max_current: ${at('battery.max_current')} }, weight: 6 kg, price: { amount: 75 USD } }
  in_parallel: 2
  place: inside
  kept_above: 5 °C
  fuse: ${at('bank.fuse')}
  each_fuse: ${at('bank.each_fuse')}
  interrupting_rating: ${at('bank.interrupting_rating')}
inverter: { power: ${at('inverter.power')}, surge: ${at('inverter.surge')}, efficiency: 100 % }
loads:
  - { name: heater, power: ${at('loads.dc')}, hours: 0.1, one_of: either }
  - { name: saw, power: 300 W, surge: 500 W, hours: 0.1, supply: ac, one_of: either }
limits: { weight: ${at('limits.weight')}, budget: ${at('limits.budget')} }
`,
  )
  const { findings } = checkFile(library, 'own.system.yaml', { today: '2026-11-25', years: 1 })!
  return findings.map(({ rule, severity }) => `${severity} ${rule}`)
}

const enough = found()

test('nothing is found where all limits are just met, but a fuse of a size that nobody makes', () => {
  expect(enough).toEqual(['information fuse-size-unusual'])
})

test.each<[rule: string, name: string, little: string, still?: string]>([
  ['error bend-beyond-limit', 'panel.bend', '19.9 deg'],
  ['error bend-beyond-limit', 'surface.curvature', '20.1 deg'],
  ['error system-voltage-exceeded', 'panel.system_voltage', '39.9 V'],
  ['error string-voltage-high', 'controller.max_voltage', '39.9 V', '40 V'],
  ['warning short-circuit-current-high', 'controller.max_short_circuit_current', '9.9 A', '10 A'],
  ['error short-circuit-current-high', 'controller.max_short_circuit_current', '7.9 A', '8 A'],
  ['information array-power-high', 'controller.max_power', '184 W'],
  ['warning string-fuse-off', 'array.string_fuse', '5.9 A', '6.24 A'],
  ['error string-fuse-off', 'array.string_fuse', '10.1 A', '9.6 A'],
  ['error string-fuse-off', 'panel.series_fuse', '7.9 A', '8 A'],
  ['error disconnect-rating-low', 'disconnect.current', '9.9 A'],
  ['error disconnect-rating-low', 'disconnect.voltage', '39.9 V'],
  ['warning discharge-current-high', 'battery.max_current', '24.9 A'],
  ['warning battery-fuse-low', 'bank.fuse', '62.4 A'],
  ['warning each-fuse-low', 'bank.each_fuse', '31.2 A'],
  ['warning interrupting-rating-low', 'bank.interrupting_rating', '9.9 kA'],
  ['warning inverter-overloaded', 'inverter.power', '299 W'],
  ['warning inverter-overloaded', 'inverter.surge', '499 W'],
  ['warning weight-limit-exceeded', 'limits.weight', '7.9 kg'],
  ['warning budget-exceeded', 'limits.budget', '499 USD'],
])('%s: %s of %s', (rule, name, little, still) => {
  expect(found({ [name]: little })).toContain(rule)
  expect(still === undefined ? enough : found({ [name]: still })).not.toContain(rule)
})
