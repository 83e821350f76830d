import { expect, test } from 'vitest'
import type { QuantityKind } from '../../server/src/quantities/quantity.ts'
import { readQuantity } from '../../server/src/quantities/read.ts'

/** As sheets print quantities, in the field of a record: what it is in the field's unit, and its upper end. */
test.each<[QuantityKind, string, number, string, number?]>([
  ['power-coefficient', '(-0.38±0.05) %/K', -0.0038, '%/K'],
  ['power-coefficient', '−0.38 ± 0.05 %/°C', -0.0038, '%/°C'],
  ['current-coefficient', '(+0.05 +/- 0.015) %/K', 0.0005, '%/K'],
  ['voltage-coefficient', '-124 ± 5 mV/°C', -0.124, 'mV/°C'],
  ['temperature', '46 ± 2 °C', 46, '°C'],
  ['temperature', '115 °F (46 °C)', 46.11, '°F'],
  ['temperature-range', '-40 °F to +185 °F', -40, '°F', 85],
  ['temperature-range', '-40 to +185 °F (-40..85 °C)', -40, '°F', 85],
  ['temperature-range', '-40..85 °C / -40..185 °F', -40, '°C', 85],
  ['tolerance', '±3 %', -0.03, '%', 0.03],
  ['voltage', '1000 V (IEC)', 1000, 'V'],
  ['voltage', '1000 V DC (IEC/UL)', 1000, 'V'],
  ['mass', '2.2 kg / 4.85 lb', 2.2, 'lb'],
  ['length', '1190 mm (46.9 in)', 1.19, 'mm'],
])('%s %s', (kind, text, value, unit, upper) => {
  const { quantity } = readQuantity(text, kind)
  expect(quantity).toMatchObject({ unit })
  expect(quantity!.value).toBeCloseTo(value, 2)
  if (upper !== undefined) expect(quantity!.upper).toBeCloseTo(upper, 1)
})

test.each<[QuantityKind, string, readonly string[]]>([
  ['voltage', '600 V (UL) / 1000 V (IEC)', ['600 V', '1000 V']],
  ['power', '110 W (±3 %)', ['110 W']],
  ['temperature-range', '-40 to +185 °F (-40..75 °C)', []],
])('%s %s is asked about', (kind, text, fixes) => {
  expect(readQuantity(text, kind).problem!.fixes.map((fix) => fix.text)).toEqual(fixes)
})
