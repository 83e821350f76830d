// What the other strings of a measurement say of one, and what they do not.
import { expect, test } from 'vitest'
import { measuredOf } from '../../../server/src/review/measured/measured.ts'
import { stringExpected } from '../../../server/src/review/measured/panel-expected.ts'
import { quantities, unitsOf, type Quantity } from '../../../server/src/review/measured/string.ts'
import type { ResolvedSystem } from '../../../server/src/review/resolved.ts'
import { stringsOf } from '../../../server/src/review/strings.ts'
import { measurementAboveExpected } from '../../../server/src/review/rules/measurement-above-expected.ts'
import { figuresOf } from '../../../server/src/review/figures-of.ts'
import { resolved } from '../resolved.ts'

const tern =
  '{ stc: { pmax: 110 W, vmp: 18.6 V, imp: 5.92 A, voc: 22.1 V, isc: 6.31 A }, cells: { in_series: 36 }, temperature_coefficients: { pmax: -0.38 %/°C, voc: -0.29 %/°C, isc: 0.05 %/°C } }'
const grebe = tern.replaceAll(
  /(pmax|imp|isc): ([\d.]+) (W|A)/g,
  (_, name, n, unit) => `${name}: ${Number(n) / 2} ${unit}`,
)
const wren = tern
  .replaceAll(/(vmp|voc): ([\d.]+) V/g, (_, name, n) => `${name}: ${Number(n) * 2} V`)
  .replace('110', '220')

const conditions = { irradiance: 800, temperature: 50 }
type Typed = Readonly<Partial<Record<Quantity, number>>> & { readonly string?: string }

/** Strings of two panels each, with the day on which so many times what is expected was measured on each. */
function measured(
  strings: readonly (readonly [panel: string, surface: string])[],
  days: readonly (readonly Typed[])[],
  known = 'irradiance: 800 W/m2, cell_temperature: 50 °C',
): ResolvedSystem {
  const panels = strings.map(([panel, surface]) => `{ panel: ${panel}, count: 2, surface: ${surface} }`)
  const array = `arrays: [{ id: main, panels: [${panels.join(', ')}], wiring: { in_series: 2, in_parallel: ${strings.length} } }]`
  const surfaces =
    'surfaces: [{ id: roof, tilt: 20 deg, azimuth: 180 deg }, { id: porch, tilt: 40 deg, azimuth: 90 deg }]'
  const expected = stringsOf(resolved(`${surfaces}\n${array}\n`).arrays[0]!).map((string) =>
    stringExpected(
      string.map(({ panel }) => panel?.record),
      conditions,
    ),
  )
  const row = (typed: Typed, i: number) => {
    const values = quantities.flatMap((quantity) => {
      const share = typed[quantity]
      return share === undefined
        ? []
        : [`${quantity}: ${(share * expected[i]![quantity]!).toFixed(2)} ${unitsOf[quantity]}`]
    })
    return `{ string: ${typed.string ?? i + 1}, ${values.join(', ')} }`
  }
  const list = days.map(
    (day, n) => `{ date: 2026-06-1${n}, array: main, ${known}, strings: [${day.map(row).join(', ')}] }`,
  )
  return resolved(`${surfaces}\n${array}\nmeasurements: [${list.join(', ')}]\n`)
}

const sound: Typed = { voc: 1, isc: 1, vmp: 1, imp: 1 }
const apart = (system: ResolvedSystem, which: number, quantity: Quantity) =>
  measuredOf(system).strings[which]!.string.readings.get(quantity)?.apart?.share ?? null
const slips = (system: ResolvedSystem) =>
  measuredOf(system).slips.map(({ kind, field, text, also }) => [
    kind,
    field.pointer,
    text,
    ...(also ? [also.text] : []),
  ])

test('currents are compared with those of strings on the same surface, voltages with all', () => {
  const day = [sound, { ...sound, isc: 0.97, voc: 0.97 }, { ...sound, isc: 0.5, voc: 0.98 }]
  const system = measured([[tern, 'roof'], [tern, 'roof'], [tern, 'porch']], [day]) // prettier-ignore
  expect(apart(system, 0, 'isc')).toBeCloseTo(1 / 0.97 - 1, 2)
  expect(apart(system, 2, 'isc')).toBeNull()
  expect(apart(system, 2, 'voc')).toBeCloseTo(0.98 / 0.985 - 1, 2)
})

test('strings are compared with those of the same day', () => {
  const system = measured([[tern, 'roof'], [tern, 'roof']], [[sound], [{ ...sound, isc: 0.5 }]]) // prettier-ignore
  expect([apart(system, 0, 'isc'), apart(system, 1, 'isc')]).toEqual([null, null])
})

test('a current of 0, as of a string that is off, serves for no comparison', () => {
  const system = measured([[tern, 'roof'], [tern, 'roof']], [[sound, { ...sound, isc: 0 }]]) // prettier-ignore
  expect([apart(system, 0, 'isc'), apart(system, 1, 'isc')]).toEqual([null, null])
})

test('without a sun the other strings show a point that moved, a string alone does not', () => {
  const moved = { ...sound, isc: 0.1 }
  const none = 'notes: cloudy'
  const one = [tern, 'roof'] as const
  expect(slips(measured([one, one, one], [[sound, moved, sound]], none))).toEqual([
    ['decimal point moved', '/measurements/0/strings/1/isc', '5.1 A'],
  ])
  expect(slips(measured([one], [[moved]], none))).toEqual([])
  // two would each be the mistake of the other
  expect(slips(measured([one, one], [[sound, moved]], none))).toHaveLength(2)
})

test('unlike strings whose readings are each other’s are exchanged, each once', () => {
  const pairs = [[tern, 'roof'], [grebe, 'roof'], [tern, 'roof'], [wren, 'roof']] as const // prettier-ignore
  const day = [{ ...sound, string: '2' }, { ...sound, string: '1' }, sound, sound]
  expect(slips(measured(pairs, [day]))).toEqual([['strings exchanged', '/measurements/0/strings/1/string', '2', '1']])
  const four = [
    { ...sound, string: '2' },
    { ...sound, string: '1' },
    { ...sound, string: '4' },
    { ...sound, string: '3' },
  ]
  expect(slips(measured(pairs, [four])).map(([kind]) => kind)).toEqual(['strings exchanged', 'strings exchanged'])
})

test('alike strings are not', () => {
  const three = [tern, 'roof'] as const
  expect(
    slips(
      measured(
        [three, three],
        [
          [
            { ...sound, string: '2' },
            { ...sound, string: '1' },
          ],
        ],
      ),
    ),
  ).toEqual([])
})

test('the power is that of Vmp and Imp, and known only with both', () => {
  const system = measured([[tern, 'roof'], [tern, 'roof']], [[sound, { voc: 1, isc: 1, vmp: 1 }]]) // prettier-ignore
  const [both, one] = measuredOf(system).strings.map(({ string }) => string.power)
  expect(both!.value / both!.expected!).toBeCloseTo(1, 2)
  expect(one).toBeNull()
})

test('a clamp held the other way round shows the same current', () => {
  const system = measured([[tern, 'roof']], [[{ voc: 1, isc: -1, vmp: 1, imp: -1 }]])
  const [{ string, low }] = measuredOf(system).strings as [ReturnType<typeof measuredOf>['strings'][number]]
  expect(string.readings.get('isc')!.off!.share).toBeCloseTo(0, 2)
  expect(low).toEqual([])
})

test('a string of which one value is high and another low is spoken of once, as low', () => {
  const high = (string: Typed) => {
    const system = measured([[tern, 'roof'], [tern, 'roof']], [[string, sound]]) // prettier-ignore
    return [measurementAboveExpected.check(system, figuresOf(system)) ?? []].flat().length
  }
  expect(high({ ...sound, voc: 1.12, vmp: 1.12 })).toBe(1)
  expect(high({ voc: 1.12, vmp: 1.12, isc: 0.7, imp: 0.7 })).toBe(0)
})
