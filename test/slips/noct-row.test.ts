import { expect, test } from 'vitest'
import { index } from '../../server/src/slips/evidence.ts'
import { noctRowGain } from '../../server/src/slips/typos/noct-row.ts'
import { evidence, tern } from './records.ts'

/**
 * Voc 22.1 V and Isc 6.31 A at NOCT 45 °C (800 W/m², so 20 K above 25 °C), by the translation of IEC 60891 (from memory):
 * Isc 0.8 x 6.31 A x (1 + 0.0005 x 20) = 5.10 A, Voc 22.1 V x (1 - 0.003 x 20 + 0.042 ln 0.8) = 20.57 V.
 */
const row = { '/noct/temperature': '45 °C', '/noct/voc': '20.57 V', '/noct/isc': '5.10 A' }

const gain = (typed: Readonly<Record<string, string>>, field: number, value: number) =>
  noctRowGain(evidence('mono', { ...tern, ...row, ...typed }, 'flexible'), {
    fields: [field],
    values: [value],
    texts: [],
    why: { say: 'exchanged' },
    prior: 0,
  })

test.each([
  ['/stc/voc', '24.1 V', index.voc, 22.1],
  ['/stc/voc', '2.21 V', index.voc, 22.1],
  ['/stc/isc', '6.81 A', index.isc, 6.31],
  ['/stc/isc', '63.1 A', index.isc, 6.31],
])('the row at NOCT speaks for the value that leads to it: %s %s', (pointer, typed, field, meant) => {
  expect(gain({ [pointer]: typed }, field, meant)).toBeGreaterThan(5)
})

test.each([
  [index.voc, 24.1],
  [index.isc, 5.81],
])('and against one that leads away from it', (field, value) => {
  expect(gain({}, field, value)).toBeLessThan(-5)
})

test('it tells one value from another within its own rounding only a little', () => {
  expect(Math.abs(gain({ '/stc/voc': '22.2 V' }, index.voc, 22.1))).toBeLessThan(0.2)
})

test('a temperature that no panel reaches speaks against the correction that puts it there', () => {
  expect(gain({}, index.noct, 450)).toBeLessThan(-25)
})

test('what leads to no positive value says nothing', () => {
  expect(gain({ '/noct/voc': '0 V', '/noct/isc': '0 A' }, index.voc, 24.1)).toBe(0)
})

test('a sheet without these two says nothing', () => {
  const { '/noct/voc': _, '/noct/isc': __, ...others } = { ...tern, ...row } as Record<string, string>
  const candidate = { fields: [index.voc], values: [2.21], texts: [], why: { say: 'exchanged' }, prior: 0 }
  expect(noctRowGain(evidence('mono', others, 'flexible'), candidate)).toBe(0)
})
