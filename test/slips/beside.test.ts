// What a record says beside its mistake: a second mistake, a rival fix, a family that grows, another technology.
import { expect, test } from 'vitest'
import { familyOf } from '../../server/src/slips/family/family.ts'
import { findSlip } from '../../server/src/slips/find-slip.ts'
import { evidence, tern } from './records.ts'

const poly = {
  '/cells/in_series': '60',
  '/stc/pmax': '265 W',
  '/stc/vmp': '30.9 V',
  '/stc/imp': '8.58 A',
  '/stc/voc': '38.1 V',
  '/stc/isc': '9.05 A',
  '/temperature_coefficients/pmax': '-0.41 %/°C',
  '/temperature_coefficients/voc': '-0.31 %/°C',
  '/temperature_coefficients/isc': '0.05 %/°C',
  '/noct/temperature': '45 °C',
  '/size/length': '1640 mm',
  '/size/width': '992 mm',
}

test('a poly panel that hangs together is quiet, with glass and without', () => {
  expect(findSlip(evidence('poly', poly))).toEqual({ kind: 'consistent' })
  const light = {
    ...tern,
    '/stc/pmax': '100 W',
    '/stc/imp': '5.38 A',
    '/stc/isc': '5.81 A',
    '/stc/efficiency': '15.6 %',
  }
  const own = { ...light, '/noct/pmax': '73.6 W', '/noct/imp': '4.28 A', '/temperature_coefficients/voc': '-0.32 %/°C' }
  expect(findSlip(evidence('poly', own, 'flexible'))).toEqual({ kind: 'consistent' })
})

test.each<{ slip: string; typed: Record<string, string>; fixed: string }>([
  { slip: 'digits swapped', typed: { '/stc/voc': '31.8 V' }, fixed: '38.1 V' },
  { slip: 'a neighbouring key', typed: { '/stc/imp': '9.58 A' }, fixed: '8.58 A' },
  { slip: 'the value at NOCT', typed: { '/stc/pmax': '196 W' }, fixed: '265 W' },
  { slip: 'the sign lost', typed: { '/temperature_coefficients/pmax': '0.41 %/°C' }, fixed: '-0.41 %/°C' },
  { slip: 'a digit doubled', typed: { '/size/length': '11640 mm' }, fixed: '1640 mm' },
])('poly, $slip: $typed', ({ typed, fixed }) => {
  const [pointer] = Object.keys(typed)
  expect(findSlip(evidence('poly', { ...poly, ...typed }))).toMatchObject({ kind: 'slip', pointer, text: fixed })
})

// as sheets print them: a product of volts and amperes is in a class of 5 W, and the power of a class is wrong rather than two voltages
test.each<{ slip: string; record: Record<string, string>; typed: Record<string, string>; fixed: string }>([
  { slip: 'Pmax at NOCT', record: poly, typed: { '/stc/pmax': '196 W', '/stc/imp': '8.61 A' }, fixed: '265 W' },
  {
    slip: 'Pmax of another class, where no more than the ratings and the sides are given',
    record: {
      '/stc/pmax': '270 W',
      '/stc/vmp': '31.5 V',
      '/stc/imp': '8.57 A',
      '/stc/voc': '38.6 V',
      '/stc/isc': '9.12 A',
      '/size/length': '1630 mm',
      '/size/width': '988 mm',
    },
    typed: { '/stc/pmax': '285 W' },
    fixed: '270 W',
  },
  {
    slip: '36 cells for the 72 of 125 mm',
    record: {
      '/cells/in_series': '72',
      '/stc/pmax': '180 W',
      '/stc/vmp': '36 V',
      '/stc/imp': '5 A',
      '/stc/voc': '44.7 V',
      '/stc/isc': '5.4 A',
      '/stc/efficiency': '12.5 %',
      '/temperature_coefficients/pmax': '-0.45 %/°C',
      '/temperature_coefficients/voc': '-0.33 %/°C',
      '/temperature_coefficients/isc': '0.03 %/°C',
      '/noct/temperature': '46 °C',
      '/size/length': '1600 mm',
      '/size/width': '900 mm',
    },
    typed: { '/cells/in_series': '36' },
    fixed: '72',
  },
])('$slip is read as that', ({ record, typed, fixed }) => {
  expect(findSlip(evidence('mono', record))).toEqual({ kind: 'consistent' })
  const [pointer] = Object.keys(typed)
  expect(findSlip(evidence('mono', { ...record, ...typed }))).toMatchObject({ kind: 'slip', pointer, text: fixed })
})

test('a current that falls while the power grows is reported, and the record alone would be quiet', () => {
  const step = (pmax: number) =>
    evidence('poly', {
      ...poly,
      '/stc/pmax': `${pmax} W`,
      '/stc/imp': `${(pmax / 30.9).toFixed(2)} A`,
      '/stc/isc': `${(pmax / 29.28).toFixed(2)} A`,
    })
  const falling = evidence('poly', { ...poly, '/stc/isc': '8.70 A' })
  expect(findSlip(falling)).toEqual({ kind: 'consistent' })
  expect(findSlip(falling, familyOf(falling, [step(255), step(260), step(270)]))).toMatchObject({
    kind: 'disagree',
    pointers: ['/stc/isc'],
  })
})

test.each<{ slip: string; typed: Record<string, string>; fixed: Record<string, string> }>([
  {
    slip: 'a gross one hides no digits',
    typed: { '/stc/imp': '0.592 A', '/temperature_coefficients/voc': '-29 %/°C' },
    fixed: { '/stc/imp': '5.92 A', '/temperature_coefficients/voc': '-0.29 %/°C' },
  },
  {
    slip: 'two gross ones',
    typed: { '/stc/voc': '221 V', '/temperature_coefficients/pmax': '-3.8 %/°C' },
    fixed: { '/stc/voc': '22.1 V', '/temperature_coefficients/pmax': '-0.38 %/°C' },
  },
])('two mistakes, $slip: fix by fix it ends in what was meant', ({ typed, fixed }) => {
  const texts = { ...tern, ...typed }
  for (const _ of Object.keys(typed)) {
    const verdict = findSlip(evidence('mono', texts, 'flexible'))
    if (verdict.kind === 'slip') texts[verdict.pointer] = verdict.text
  }
  expect(texts).toEqual({ ...tern, ...fixed })
})

test('the column with light on the back is taken back as a whole, though few flexible panels have two sides', () => {
  const typed = { ...tern, '/stc/pmax': '121 W', '/stc/imp': '6.51 A', '/stc/isc': '6.94 A' }
  expect(findSlip(evidence('mono', typed, 'flexible'))).toMatchObject({
    kind: 'slip',
    pointer: '/stc/pmax',
    text: '110 W',
    also: [
      { pointer: '/stc/imp', text: '5.92 A' },
      { pointer: '/stc/isc', text: '6.31 A' },
    ],
  })
})

test('light on the back adds a step of 5 %, which currents say more exactly than a small power does', () => {
  const front = { '/stc/pmax': '36 W', '/stc/imp': '1.94 A', '/stc/isc': '2.06 A' }
  const small = { ...tern, ...front, '/size/width': '180 mm', '/stc/efficiency': '16.8 %' }
  const alone = Object.entries(small).filter(([pointer]) => !/noct\/(pmax|imp)/.test(pointer))
  const typed = { ...Object.fromEntries(alone), '/stc/pmax': '41 W', '/stc/imp': '2.23 A', '/stc/isc': '2.37 A' }
  const [, ...currents] = Object.entries(front).map(([pointer, text]) => ({ pointer, text }))
  expect(findSlip(evidence('mono', typed, 'flexible'))).toMatchObject({ text: '36 W', also: currents })
})

test('a power at NOCT is what the voltage and the current ask for, round or not', () => {
  const small = { ...tern, '/stc/pmax': '36 W', '/stc/imp': '1.94 A', '/stc/isc': '2.06 A', '/size/width': '180 mm' }
  const alone = Object.entries(small).filter(([pointer]) => !/noct\/(pmax|imp)|efficiency/.test(pointer))
  const typed = evidence('mono', { ...Object.fromEntries(alone), '/stc/pmax': '27 W' }, 'flexible')
  expect(findSlip(typed)).toMatchObject({ kind: 'slip', pointer: '/stc/pmax', text: '36 W' })
})

test('two cell counts that would do as well are both named', () => {
  const verdict = findSlip(evidence('topcon', { ...tern, '/cells/in_series': '3' }, 'flexible'))
  expect(verdict).toMatchObject({ kind: 'slip', text: '33', rival: { pointer: '/cells/in_series', text: '32' } })
})

test('a side that is a little likelier than another efficiency is named with it', () => {
  const alone = Object.entries(tern).filter(([pointer]) => !/noct\/(pmax|imp)/.test(pointer))
  const typed = { ...Object.fromEntries(alone), '/stc/efficiency': '14.4 %' }
  expect(findSlip(evidence('mono', typed, 'flexible'))).toMatchObject({
    pointer: '/size/width',
    rival: { pointer: '/stc/efficiency', text: '17.1 %' },
  })
})

test.each<{ slip: string; typed: Record<string, string>; fixed: Record<string, string> }>([
  {
    slip: 'both ends of the curve typed as full power',
    typed: { '/stc/voc': '18.6 V', '/stc/vmp': '22.1 V', '/stc/isc': '5.92 A', '/stc/imp': '6.31 A' },
    fixed: {},
  },
  {
    slip: 'no current is worked out from a voltage that is exchanged',
    typed: { '/stc/imp': '592 A', '/stc/vmp': '22.1 V', '/stc/voc': '18.6 V' },
    fixed: { '/stc/vmp': '22.1 V', '/stc/voc': '18.6 V' },
  },
])('$slip', ({ typed, fixed }) => {
  const verdict = findSlip(evidence('mono', { ...tern, ...typed }, 'flexible'))
  expect(verdict.kind).toBe('slip')
  if (verdict.kind !== 'slip') return
  const texts: Record<string, string> = { ...tern, ...typed, [verdict.pointer]: verdict.text }
  for (const { pointer, text } of verdict.also ?? []) texts[pointer] = text
  expect(texts).toEqual({ ...tern, ...fixed })
})
