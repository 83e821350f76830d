import { expect, test } from 'vitest'
import { notChecked } from '../../server/src/review/not-checked.ts'
import { resolved } from './resolved.ts'

const of = (panel: string) =>
  notChecked(resolved(`kind: cabin\narrays: [{ id: main, panels: [{ panel: ${panel}, count: 1 }] }]\n`))

test.each([
  { what: 'Weight', given: 'weight: 2.2 kg' },
  { what: 'Reverse current', given: 'limits: { series_fuse: 15 A }' },
  { what: 'Heat', given: 'limits: { operating_temperature: -40 to 85 °C }' },
  { what: 'Cold-day voltage against', given: 'limits: { system_voltage: 600 V }' },
  { what: 'Warranty', given: 'warranty: { exclusions: [hail] }' },
])('a panel without it is not checked for: $what', ({ what, given }) => {
  const isNamed = (line: string) => line.startsWith(what)
  expect(of('{ name: Tern 110 }').some(isNamed)).toBe(true)
  expect(of(`{ name: Tern 110, ${given} }`).some(isNamed)).toBe(false)
})

const climate = `{ latitude: 43.5 deg, sun: [1.6, 2.5, 3.9, 4.8, 5.7, 6.2, 6.1, 5.4, 4.3, 2.8, 1.8, 1.4],
    air: { mean_high: [12, 13, 15, 17, 20, 23, 25, 26, 24, 20, 15, 12], mean_low: [5, 5, 7, 9, 12, 15, 17, 17, 15, 12, 8, 5] } }`

/** A system that is complete, in parts. */
const whole = {
  site: `{ coldest: -5 °C, hottest: 33 °C, climate: ${climate} }`,
  surface: 'size: { length: 3 m, width: 2 m }, mounting: standoff, tilt: 10 deg, azimuth: 180 deg',
  panel: `{ name: Tern 110, construction: rigid, stc: { pmax: 110 W, vmp: 18.6 V, imp: 5.92 A, voc: 22.1 V, isc: 6.31 A }, cells: { technology: mono, in_series: 36 }, temperature_coefficients: { pmax: -0.38 %/°C, voc: -0.29 %/°C, isc: 0.05 %/°C }, size: { length: 1190 mm, width: 540 mm } }`,
  controller:
    '{ type: mppt, efficiency: 97 %, input: { max_voltage: 100 V, max_short_circuit_current: 30 A, max_power: 400 W, above_battery: 5 V }, output: { max_current: 30 A, battery_voltages: [12 V] } }',
  cable: '{ size: 6 mm2, length: 8 m, insulation: 90 °C }',
  battery:
    '{ chemistry: lifepo4, nominal_voltage: 12.8 V, capacity: { amount: 100 Ah }, charge: { max_current: 80 A }, discharge: { max_current: 100 A } }',
  bank: 'place: inside, kept_above: 5 °C, cable: { size: 25 mm2, length: 1 m, insulation: 90 °C }, interrupting_rating: 5 kA, in_parallel: 1',
  output: '{ fuse: 40 A, cable: { size: 10 mm2, insulation: 90 °C } }',
  disconnect: '{ current: 16 A, voltage: 250 V }',
  inverter: '{}',
  loads: '[{ name: fridge, power: 25 W, hours: 24 }]',
  others: '[]',
  limits: '{}',
}

const lines = (parts: Partial<typeof whole>) => {
  const all = { ...whole, ...parts }
  return notChecked(
    resolved(`
kind: cabin
site: ${all.site}
surfaces: [{ id: roof, ${all.surface} }]
arrays:
  - id: main
    panels: [{ panel: ${all.panel}, count: 1, surface: roof }]
    wiring: { in_series: 1, in_parallel: 1 }
    controller: ${all.controller}
    cable: ${all.cable}
    output: ${all.output}
    disconnect: ${all.disconnect}
battery: { battery: ${all.battery}, ${all.bank} }
inverter: ${all.inverter}
loads: ${all.loads}
other_sources: ${all.others}
limits: ${all.limits}
`),
  )
}

const complete = lines({})

test.each<[line: string, parts: Partial<typeof whole>]>([
  [
    'The coldest air is not known',
    { site: `{ hottest: 33 °C, climate: ${climate.replace(/mean_low: .*?\]/, 'mean_low: []')} }` },
  ],
  ['Yield, balance and state of charge through the year: no climate', { site: '{ coldest: -5 °C, hottest: 33 °C }' }],
  [
    'Yield, balance and state of charge through the year: the climate lacks',
    { site: `{ coldest: -5 °C, hottest: 33 °C, climate: ${climate.replace('latitude: 43.5 deg, ', '')} }` },
  ],
  ['main: voltage and current against the controller: no controller', { controller: 'nowhere' }],
  ['main: hot-day voltage against the controller', { controller: whole.controller.replace('type: mppt, ', '') }],
  [
    'main: cold-day voltage against the controller',
    { controller: whole.controller.replace('max_voltage: 100 V, ', '') },
  ],
  [
    'main: short-circuit current against the controller',
    { controller: whole.controller.replace('max_short_circuit_current: 30 A, ', '') },
  ],
  [
    'main: the voltage at which the controller starts',
    { controller: whole.controller.replace(', above_battery: 5 V', '') },
  ],
  [
    'main: battery voltage against the controller',
    { controller: whole.controller.replace(', battery_voltages: [12 V]', '') },
  ],
  [
    'main: power of the panels against the controller',
    { controller: whole.controller.replace(', max_power: 400 W', '') },
  ],
  ['main: elsewhere: no such panel record', { panel: 'elsewhere' }],
  ['main: voltage drop and heat of the cable', { cable: '{ size: 6 mm2, insulation: 90 °C }' }],
  ['main: voltage drop and heat of the cable', { cable: '{ length: 6 m, insulation: 90 °C }' }],
  ['main: allowable current of the cable: its insulation', { cable: '{ size: 6 mm2, length: 8 m }' }],
  [
    'main: allowable current of the cable: 6 mm2 with 50 °C',
    { cable: '{ size: 6 mm2, length: 8 m, insulation: 50 °C }' },
  ],
  ['Tern 110 gives no Voc coefficient; its cold-day', { panel: whole.panel.replace(', voc: -0.29 %/°C', '') }],
  [
    'Cold-day voltage: Tern 110 gives no Voc coefficient',
    { panel: whole.panel.replace(', voc: -0.29 %/°C', '').replace('mono', 'cigs') },
  ],
  [
    'Rear gain: light on the back of Tern 110',
    { panel: whole.panel.replace('name: Tern 110', 'name: Tern 110, bifacial: true') },
  ],
  [
    'Bend: Tern 110 gives no limit, and roof bends by 20 deg',
    { surface: `${whole.surface}, curvature: 20 deg`, panel: whole.panel.replace('rigid', 'flexible') },
  ],
  ['roof: whether the panels fit', { surface: 'mounting: standoff' }],
  ['roof: how panels are mounted', { surface: 'size: { length: 3 m, width: 2 m }' }],
  ['roof: which way it faces', { surface: whole.surface.replace(', azimuth: 180 deg', '') }],
  ['Tilt of surfaces: as it swings', { site: whole.site.replace('{ coldest', '{ swings: true, coldest') }],
  ['Battery, autonomy and charge currents: no battery record', { battery: 'nowhere' }],
  ['Battery, autonomy and charge currents: chemistry, voltage or capacity', { battery: '{ nominal_voltage: 12.8 V }' }],
  [
    'Charge current: the battery gives no limit',
    { battery: whole.battery.replace(', charge: { max_current: 80 A }', '') },
  ],
  ['Load current against the battery', { battery: whole.battery.replace(', discharge: { max_current: 100 A }', '') }],
  [
    'How cold the battery gets: where it is kept',
    { bank: whole.bank.replace('place: inside, kept_above: 5 °C, ', '') },
  ],
  ['How cold the battery gets: above what the place inside', { bank: whole.bank.replace(', kept_above: 5 °C', '') }],
  ['Heat of alternator', { others: '[{ name: alternator, kind: alternator, power: 400 W, hours: 1 }]' }],
  ['Battery cable: size or length', { bank: whole.bank.replace('length: 1 m, ', '') }],
  [
    'Allowable current of the battery cable: its insulation',
    { bank: whole.bank.replace('length: 1 m, insulation: 90 °C', 'length: 1 m') },
  ],
  [
    'Allowable current of the battery cable: its size',
    { bank: whole.bank.replace('length: 1 m, insulation: 90 °C', 'length: 1 m, insulation: 50 °C') },
  ],
  ['Losses of the inverter', { loads: '[{ name: kettle, power: 900 W, hours: 0.2, supply: ac }]' }],
  [
    'Loads against the inverter',
    { loads: '[{ name: kettle, power: 900 W, hours: 0.2, supply: ac }]', inverter: '{ efficiency: 90 % }' },
  ],
  [
    'Motors as they start',
    {
      loads: '[{ name: pump, power: 900 W, hours: 0.2, supply: ac }]',
      inverter: '{ efficiency: 90 %, power: 1500 W }',
    },
  ],
  ['Balance of the year: no loads', { loads: '[]' }],
  ['Interrupting rating of the main fuse', { bank: whole.bank.replace('interrupting_rating: 5 kA, ', '') }],
  ['A fuse at each battery in parallel', { bank: whole.bank.replace('in_parallel: 1', 'in_parallel: 2') }],
  ['main: disconnect not given', { disconnect: '{ current: 16 A }' }],
  ['main: output fuse not given', { output: whole.output.replace('fuse: 40 A, ', '') }],
  ['main: output cable not given', { output: whole.output.replace('insulation: 90 °C', 'length: 2 m') }],
  ['main: disconnect, output fuse and output cable not given', { disconnect: '{}', output: '{}' }],
  ['Budget: Tern 110', { limits: '{ budget: 500 USD }' }],
  ['Budget: nowhere', { panel: 'nowhere', limits: '{ budget: 500 USD }' }],
  ['Weight limit: the weight of Tern 110', { limits: '{ weight: 20 kg }' }],
  ['Weight limit: the weight of nowhere', { panel: 'nowhere', limits: '{ weight: 20 kg }' }],
])('"%s" is said where that is missing, and not otherwise', (line, parts) => {
  const isSaid = (all: readonly string[]) => all.some((one) => one.startsWith(line))
  expect([isSaid(lines(parts)), isSaid(complete)]).toEqual([true, false])
})

test.each<[line: string, parts: Partial<typeof whole>]>([
  [
    'main: short-circuit current',
    { controller: '{ type: pwm, input: { max_voltage: 50 V }, output: { max_current: 30 A } }' },
  ],
  ['main: the voltage at which the controller starts', { controller: '{ type: pwm, output: { max_current: 30 A } }' }],
  [
    'Rear gain',
    {
      panel: whole.panel.replace('name: Tern 110', 'name: Tern 110, bifacial: true'),
      surface: whole.surface.replace('standoff', 'bonded'),
    },
  ],
  ['Bend', { surface: `${whole.surface}, curvature: 20 deg` }],
  ['Bend', { surface: `${whole.surface}, curvature: 0 deg`, panel: whole.panel.replace('rigid', 'flexible') }],
  ['roof: which way it faces', { surface: whole.surface.replace('tilt: 10 deg, azimuth: 180 deg', 'tilt: 0 deg') }],
  [
    'Tilt of surfaces',
    {
      site: whole.site.replace('{ coldest', '{ swings: true, coldest'),
      surface: whole.surface.replace('tilt: 10 deg', 'tilt: 0 deg'),
    },
  ],
  ['Heat of', { others: '[{ name: generator, kind: generator, power: 400 W, hours: 1 }]' }],
  [
    'Losses of the inverter',
    { loads: '[{ name: kettle, power: 900 W, hours: 0.2, supply: ac }]', inverter: '{ efficiency: 90 % }' },
  ],
  ['Dull spells', { site: '{ coldest: -5 °C, hottest: 33 °C }' }],
])('"%s" is not said where nothing hangs on it', (line, parts) => {
  expect(lines(parts).filter((one) => one.startsWith(line))).toEqual([])
})

test('what monthly means cannot show is said of a climate without hours', () => {
  expect(complete.filter((one) => one.startsWith('Dull spells'))).toHaveLength(1)
})
