import { expect, test } from 'vitest'
import { isHalfTyped } from '../../server/src/quantities/half-typed.ts'
import type { QuantityKind } from '../../server/src/quantities/quantity.ts'

test.each<[QuantityKind, string]>([
  ['voltage', ''],
  ['voltage', '22'],
  ['voltage', '22.'],
  ['voltage', '22.1 m'],
  ['power', '110 k'],
  ['length', '540 m'],
  ['length', '54 c'],
  ['temperature', '46 °'],
  ['temperature-range', '-40 °C'],
  ['temperature-range', '-40 to'],
  ['temperature-range', '-40 to 85'],
  ['voltage-coefficient', '-0.29 %'],
  ['voltage-coefficient', '-0.29 % /'],
  ['money', '28.9 U'],
  ['money', '28.9 us'],
])('as %s, more may follow %j', (kind, typed) => {
  expect(isHalfTyped(typed, kind)).toBe(true)
})

test.each<[QuantityKind, string]>([
  ['voltage', '22.1 V'],
  ['power', '110 kW'],
  ['length', '540 mm'],
  ['temperature', '46 °C'],
  ['temperature-range', '-40 °C to 85 °C'],
  ['voltage-coefficient', '-0.29 %/°C'],
  ['voltage-coefficient', '-0.29 % / °C '],
  ['money', '28.9 USD'],
  ['money', '28.9 QQQ'],
  ['voltage', '22.1 kg'],
  ['voltage', '22.1 volz'],
])('as %s, %j is all that there will be', (kind, typed) => {
  expect(isHalfTyped(typed, kind)).toBe(false)
})
