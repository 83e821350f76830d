// What is read of printed quantities with one key too many, too few or in the wrong place, kept so that it changes only on purpose:
// `npx vitest run test/quantities/one-key.test.ts --update` writes it anew, and the difference is read before it is committed.
import { expect, test } from 'vitest'
import type { Fix, QuantityKind, Reading } from '../../server/src/quantities/quantity.ts'
import { readQuantity } from '../../server/src/quantities/read.ts'

/** What a bare number is taken for, where anything is. */
const defaults: Readonly<Partial<Record<QuantityKind, string>>> = { length: 'mm', ratio: '1', mass: 'kg' }

const printed: readonly [QuantityKind, ...string[]][] = [
  ['power', '110 W', '1.1 kW', '110 Wp ± 3 %'],
  ['voltage', '18.6 V', '18,6 V', '18.6 V / 5.92 A', '18.65 22.10 V', '12/24 V'],
  ['current', '5.92 A', '5920 mA', '1S.2 A', '5 92 A'],
  ['length', '1190 mm', '46 7/8 in', '46½"', '3\' 10"', '1,190 mm', '1190 x 540 mm'],
  ['area', '6 mm2', '10 AWG', '2/0 AWG', '2 x 4 mm²'],
  ['mass', '2.2 kg', '4 lb 14 oz', '2.2 kg (4.85 lb)'],
  ['temperature', '46 °C', '46 ± 2 °C', '114.8 °F'],
  ['temperature-range', '-40..85 °C', '-40 °C to +85 °C'],
  ['power-coefficient', '-0.38 %/°C', '-0.0038 /K', '-418 mW/K'],
  ['voltage-coefficient', '-0.29 %/°C', '-64 mV/°C'],
  ['tolerance', '0/+5 %', '±3 %', '+5/-0 W', '0 to 1,500 W'],
  ['ratio', '17.1 %', '0.171', '1/2 %'],
  ['charge', '100 Ah', '100 Ah @ C/20'],
  ['money', '28.9 USD', '$ 28.9', '28.9 $', '€1.234', '-28.90 €'],
]

/** Every place with a character left out, typed twice, exchanged with the next, with a blank before it, or another one for it. */
function typed(text: string): readonly string[] {
  const chars = [...text]
  const changed = (at: number, count: number, by: string) =>
    [...chars.slice(0, at), by, ...chars.slice(at + count)].join('')
  const places = chars.flatMap((char, at) => [
    changed(at, 1, ''),
    changed(at, 0, char),
    changed(at, 0, ' '),
    changed(at, 2, `${chars[at + 1] ?? ''}${char}`),
    ...(/\d/.test(char) ? [changed(at, 1, 'O')] : [changed(at, 1, ',')]),
  ])
  return [...new Set([text, ...places, `${text} `, `about ${text}`, `see (${text}) `, `${text} x`, `± ${text}`])]
}

const number = (value: number) => String(Number(value.toPrecision(5)))

/** `18.6 V give or take 0.05`, with the fixes of its notes, or what is wrong with it and what is offered. */
function said(reading: Reading): string {
  const offered = (all: readonly Fix[]) =>
    all.map(({ text, certainty }) => ` | ${certainty === 'same' ? 'write' : 'perhaps'} ${text}`).join('')
  if (!reading.quantity) {
    const { code, start, end, fixes } = reading.problem
    return `${code} at ${start} to ${end}${offered(fixes)}`
  }
  const { value, upper, unit, half, unitDefaulted } = reading.quantity
  const values = [value, ...(upper === undefined ? [] : [upper])].map(number).join(' to ')
  const notes = reading.notes.map(({ start, end, fixes }) => `, at ${start} to ${end}${offered(fixes)}`)
  return `${values}, in ${unitDefaulted ? 'the usual ' : ''}${unit}, within ${number(half)}${notes.join('')}`
}

test.each(printed)('as %s', async (kind, ...texts) => {
  const unit = defaults[kind]
  const options = { currency: 'USD', ...(unit && { unit }) }
  const lines = texts.flatMap(typed).map((text) => `${text}: ${said(readQuantity(text, kind, options))}`)
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`one-key/${kind}.txt`)
})
