import { expect, test } from 'vitest'
import { figuresOf } from '../../server/src/review/figures-of.ts'
import { notChecked } from '../../server/src/review/not-checked.ts'
import { vmpHot, siteAt } from '../../server/src/review/panel-at.ts'
import { yearOf } from '../../server/src/review/year.ts'
import { example } from './example.ts'
import { resolved } from './resolved.ts'

const cabin = ({ panel = '', controller = '', inverter = '', load = '', parallel = 2, battery = '' }) =>
  notChecked(
    resolved(`
kind: cabin
surfaces: [{ id: roof, size: { length: 4 m, width: 3 m }, mounting: open rack }]
arrays: [{ id: main, panels: [{ panel: { name: Grebe, bifacial: true${panel} }, count: 2, surface: roof }], wiring: { in_series: 1, in_parallel: 2 }, controller: { type: mppt${controller} } }]
battery: { battery: { chemistry: agm, nominal_voltage: 12 V, capacity: { amount: 100 Ah } }, in_parallel: ${parallel}${battery} }
inverter: { efficiency: 90 %${inverter} }
loads: [{ name: pump, power: 300 W, hours: 1, supply: ac${load} }]`),
  )

test.each([
  { what: 'Rear gain: light on the back of Grebe', given: null },
  { what: 'Tolerance of Voc', given: null },
  { what: 'Shade on single cells', given: null },
  { what: 'Capacity in the cold', given: null },
  { what: 'main: power of the panels against the controller', given: { controller: ', input: { max_power: 440 W }' } },
  { what: 'Loads against the inverter', given: { inverter: ', power: 500 W' } },
  {
    what: 'Motors as they start against the surge of the inverter',
    given: { inverter: ', power: 500 W, surge: 1000 W', load: ', surge: 900 W' },
  },
  { what: 'A fuse at each battery in parallel', given: { battery: ', each_fuse: 100 A' } },
])('what is not looked at is named: $what', ({ what, given }) => {
  const isNamed = (line: string) => line.startsWith(what)
  expect(cabin({}).some(isNamed)).toBe(true)
  if (given) expect(cabin(given).some(isNamed)).toBe(false)
})

test('the drop in the array cable is compared with the Vmp of a hot day', () => {
  const system = example({ count: 2, strings: 1 })
  const { cable, vmp_hot_v: hot } = figuresOf(system).arrays[0]!
  const { panel } = system.arrays[0]!.panels[0]!
  expect(hot).toBeCloseTo(2 * vmpHot(panel!.record, siteAt(system, system.arrays[0]!.panels[0]!))!, 9)
  expect(cable!.drop_pct).toBeCloseTo((100 * cable!.current_a * cable!.resistance_ohm) / hot!, 9)
})

test('what the cable loses in an hour goes with the square of its current', () => {
  const [thin, thick] = [4, 120].map((cable) => yearOf({ ...example({ cable }), years: 1 })!.hours!.produced)
  const ratios = [...thick!].flatMap((wh, h) => (wh > 2 ? [(wh - thin![h]!) / wh ** 2] : []))
  expect(ratios.length).toBeGreaterThan(3000)
  const mean = ratios.reduce((a, b) => a + b, 0) / ratios.length
  // the thick cable loses a little itself
  for (const ratio of ratios) expect(Math.abs(ratio / mean - 1)).toBeLessThan(0.02)
})
