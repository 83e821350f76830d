// Slips of several fields have one fix for all of them, and the fields that are right are not blamed.
import { expect, test } from 'vitest'
import { pointers } from '../../server/src/slips/evidence.ts'
import { findSlip } from '../../server/src/slips/find-slip.ts'
import { evidence, tern } from './records.ts'

const fixed = (typed: Readonly<Record<string, string>>) => {
  const verdict = findSlip(evidence('mono', { ...tern, ...typed }, 'flexible'))
  if (verdict.kind !== 'slip') return verdict
  const parts = [{ pointer: verdict.pointer, text: verdict.text }, ...(verdict.also ?? [])]
  return Object.fromEntries(parts.map(({ pointer, text }) => [pointer, text]))
}
const asIn = (typed: Readonly<Record<string, string>>) =>
  Object.fromEntries(Object.keys(typed).map((pointer) => [pointer, tern[pointer]]))

test.each<{ slip: string; typed: Record<string, string> }>([
  {
    slip: 'two panels in series',
    typed: { '/stc/pmax': '220 W', '/stc/vmp': '37.2 V', '/stc/voc': '44.2 V' },
  },
  {
    slip: 'two panels in parallel',
    typed: { '/stc/pmax': '220 W', '/stc/imp': '11.84 A', '/stc/isc': '12.62 A' },
  },
  {
    slip: 'the version of twice the voltage',
    typed: { '/stc/vmp': '37.2 V', '/stc/voc': '44.2 V', '/stc/imp': '2.96 A' },
  },
  { slip: 'the currents of two panels', typed: { '/stc/imp': '11.84 A', '/stc/isc': '12.62 A' } },
  {
    slip: 'the columns of STC and NOCT exchanged',
    typed: {
      '/stc/pmax': '81 W',
      '/stc/vmp': '17.2 V',
      '/stc/imp': '4.71 A',
      '/noct/pmax': '110 W',
      '/noct/vmp': '18.6 V',
      '/noct/imp': '5.92 A',
    },
  },
  {
    slip: 'each rating one row up',
    typed: {
      '/stc/pmax': '18.6 W',
      '/stc/vmp': '5.92 V',
      '/stc/imp': '22.1 A',
      '/stc/voc': '6.31 V',
      '/stc/isc': '110 A',
    },
  },
])('$slip', ({ slip, typed }) => {
  // half of 2.96 A cannot be distinguished from the version, whose short-circuit current goes along
  const all = slip.startsWith('the version') ? { ...typed, '/stc/isc': '3.16 A' } : typed
  expect(fixed(all)).toMatchObject(asIn(typed))
})

test('a whole column of NOCT typed as that of STC is found at Pmax, and what it was is not guessed', () => {
  const typed = {
    '/stc/pmax': '81 W',
    '/stc/vmp': '17.2 V',
    '/stc/imp': '4.71 A',
    '/stc/voc': '20.6 V',
    '/stc/isc': '5.10 A',
  }
  expect(fixed(typed)).toMatchObject({ kind: 'disagree' })
  expect(fixed(typed)).toHaveProperty('pointers.0', pointers[0])
})

test('a single Vmp of the NOCT row leaves Voc as it is', () => {
  expect(fixed({ '/stc/vmp': '17.2 V' })).toEqual({ '/stc/vmp': '18.6 V' })
})

test('both voltages of the NOCT row have one fix', () => {
  expect(fixed({ '/stc/vmp': '17.3 V', '/stc/voc': '20.6 V' })).toMatchObject({ '/stc/vmp': '18.6 V' })
})

test('the Voc coefficient of one cell is that of all', () => {
  expect(fixed({ '/temperature_coefficients/voc': '-0.0018 V/°C' })).toEqual({
    '/temperature_coefficients/voc': '-0.0648 V/°C',
  })
})

test.each([
  { typed: '115 °C', meant: '46 °C' },
  { typed: '46 °F', meant: '46 °C' },
])('NOCT $typed is $meant', ({ typed, meant }) => {
  expect(fixed({ '/noct/temperature': typed })).toEqual({ '/noct/temperature': meant })
})

test('both columns exchanged go back with their voltages and currents without a load', () => {
  const noct = { '/noct/voc': '20.6 V', '/noct/isc': '5.10 A' }
  const typed = {
    '/stc/pmax': '81 W',
    '/stc/vmp': '17.2 V',
    '/stc/imp': '4.71 A',
    '/stc/voc': '20.6 V',
    '/stc/isc': '5.10 A',
    '/noct/pmax': '110 W',
    '/noct/vmp': '18.6 V',
    '/noct/imp': '5.92 A',
    '/noct/voc': '22.1 V',
    '/noct/isc': '6.31 A',
  }
  expect(fixed(typed)).toEqual({ ...asIn(typed), ...noct })
})
