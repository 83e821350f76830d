// Figures of small systems, each worked out by hand beside it.
import { expect, test } from 'vitest'
import { resolveSystem } from '../../server/src/check/resolve-system.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import type { ReadFile } from '../../server/src/records/read-file.ts'
import { layOut } from '../../server/src/review/fit.ts'
import { inWatts } from '../../server/src/review/in-watts.ts'
import { lostIn } from '../../server/src/review/mismatch-in-words.ts'
import { notChecked } from '../../server/src/review/not-checked.ts'
import { siteAt, vmpHot } from '../../server/src/review/panel-at.ts'
import { inland, strong, system, weak } from './cases.ts'
import { resolved } from './resolved.ts'

/** 12 V x 1.0667: 12.8 V. */
const load = (text: string) =>
  inWatts(resolved(`kind: cabin\nloads: [{ name: pump, ${text} }]\n`).system, 12.8, 14).loads[0]!

test.each([
  ['power: 60 W, hours: 3', 60, 3],
  ['power: 60 W, energy: 180 Wh', 60, 3],
  ['energy: 180 Wh, hours: 3', 60, 3],
  ['energy: 240 Wh', 10, 24],
  ['current: 5 A, hours: 2', 64, 2],
  ['charge: 15 Ah, hours: 2', 96, 2],
  ['current: 5 A, charge: 15 Ah', 64, 3],
  ['power: 0 W, energy: 0 Wh', 0, undefined],
  ['power: 60 W', 60, undefined],
  ['hours: 3', undefined, 3],
])('a load of %s takes %s W for %s hours', (text, power, hours) => {
  const one = load(text)
  expect(one.power?.value).toEqual(power === undefined ? undefined : expect.closeTo(power, 9))
  expect(one.hours && one.hours.value / 3600).toEqual(hours === undefined ? undefined : expect.closeTo(hours, 9))
})

test('amperes and ampere-hours are left out where the voltage is not known', () => {
  const { system: own } = resolved('kind: cabin\nloads: [{ name: pump, current: 5 A, hours: 2 }]\n')
  expect(inWatts(own, null, null).loads[0]!.power).toBeUndefined()
})

/** Two kinds of panels of 1 m by 0.5 m on a surface of one depth. */
const laid = (length: number, gap: number) => {
  const one = resolved(`
kind: cabin
surfaces: [{ id: roof, size: { length: ${length} mm, width: 500 mm }, gap: ${gap} mm, mounting: standoff }]
arrays:
  - panels:
      - { panel: { name: A, size: { length: 1 m, width: 0.5 m } }, count: 1, surface: roof }
      - { panel: { name: B, size: { length: 1 m, width: 0.5 m } }, count: 1, surface: roof }
`)
  return layOut(one, one.system.surfaces[0]!)
}

test.each([
  [2000, 0, [1, 1]],
  [1999, 0, [1, 0]],
  [2020, 20, [1, 1]],
  [2019, 20, [1, 0]],
])('of two panels of 1 m on %s mm with a gap of %s mm fit %j', (length, gap, counts) => {
  expect(laid(length, gap).map(({ laid }) => laid.length)).toEqual(counts)
})

// Vmp by Pmax's coefficient less that of Imp as estimated or typed, and by its own: -0.38 %/K, 0.05 %/K, -0.43 %/K; cells at 65 °C above 25.
test.each([
  ['pmax: -0.38 %/°C, imp: 0.05 %/°C', 18 * (1 - 0.0043 * 65)],
  ['pmax: -0.38 %/°C, imp: 0 %/°C', 18 * (1 - 0.0038 * 65)],
  ['vmp: -0.4 %/°C, pmax: -0.3 %/°C', 18 * (1 - 0.004 * 65)],
  // Voc's alone: in volts Vmp falls by what Voc falls, 0.29 % of 22 V, and a little more
  ['voc: -0.29 %/°C', 18 - 0.0029 * 22 * 65 - 0.3],
])('hot Vmp with %s', (coefficients, volts) => {
  const one = resolved(`
kind: cabin
site: { hottest: 35 °C }
surfaces: [{ id: roof, size: { length: 4 m, width: 3 m }, mounting: bonded }]
arrays: [{ panels: [{ panel: { stc: { pmax: 100 W, vmp: 18 V, imp: 5.56 A, voc: 22 V, isc: 5.9 A }, temperature_coefficients: { ${coefficients} } }, count: 1, surface: roof }] }]
`)
  const [panels] = one.arrays[0]!.panels
  expect(vmpHot(panels!.panel!.record, { ...siteAt(one, panels!) })).toBeCloseTo(
    volts,
    coefficients.startsWith('voc') ? 0 : 1,
  )
})

test('unlike panels of which one has no curve are named as not checked', () => {
  const lines = (panels: string[]) => notChecked(system({ panels })).filter((line) => line.includes('no curve fits'))
  expect(lines([strong, weak])).toEqual([])
  expect(lines([strong, strong])).toEqual([])
  expect(lines([strong, weak.replace('isc: 3.56 A', 'isc: 3.2 A')]).length).toBe(1)
})

/** Two kinds of panels by turns, in two strings; the last entry as it is given. */
function byTurns(last: string) {
  const library = createLibrary()
  const [first, second] = [strong, weak].map((one) =>
    one
      .slice(1, -1)
      .trim()
      .replaceAll(/, (?=[a-z_]+: \{)/g, '\n'),
  )
  library.put('a.panel.yaml', `${first}\n`)
  library.put('b.panel.yaml', `${second}\n`)
  library.put(
    'own.system.yaml',
    `kind: cabin
site: { climate: ${inland}, coldest: -30 °C, hottest: 35 °C }
surfaces: [{ id: roof, size: { length: 9 m, width: 3 m }, mounting: open rack, tilt: 60 deg, azimuth: 180 deg }]
arrays:
  - panels:
      - { panel: a, count: 1, surface: roof }
      - { panel: b, count: 1, surface: roof }
      - { panel: a, count: 1, surface: roof }
      - { panel: ${last}, count: 1, surface: roof }
    wiring: { in_series: 2, in_parallel: 2 }
    controller: { type: mppt, efficiency: 97 %, input: { max_voltage: 250 V }, output: { max_current: 60 A } }
battery: { battery: { chemistry: lifepo4, nominal_voltage: 12.8 V, capacity: { amount: 100 Ah }, charge: { max_current: 80 A } } }
`,
  )
  const one = resolveSystem(library, library.file('own.system.yaml') as ReadFile<'system'>)
  return lostIn(one, one.arrays[0]!)!
}

test('like panels together are proposed where the entries name records, and only what differs changes', () => {
  const { share, proposal } = byTurns('b')
  expect(share).toBeGreaterThan(0.15)
  const { field, text, also } = proposal!
  const listed = ['a', 'b', 'a', 'b']
  for (const change of [{ field, text }, ...(also ?? [])]) {
    const i = Number(/^\/arrays\/0\/panels\/(\d)\/panel$/.exec(change.field.pointer)?.[1])
    expect(listed[i]).not.toBe(change.text)
    listed[i] = change.text
  }
  expect(['a a b b', 'b b a a']).toContain(listed.join(' '))
})

test('a panel that is written in place is not moved to another entry', () => {
  const { share, proposal } = byTurns(weak)
  expect(share).toBeGreaterThan(0.15)
  expect(proposal ?? null).toBeNull()
})
