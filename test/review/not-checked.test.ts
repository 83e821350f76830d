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
])('a panel without it is not checked for: $what', ({ what, given }) => {
  const isNamed = (line: string) => line.startsWith(what)
  expect(of('{ name: Tern 110 }').some(isNamed)).toBe(true)
  expect(of(`{ name: Tern 110, ${given} }`).some(isNamed)).toBe(false)
})
