import { expect, test } from 'vitest'
import { findSlip } from '../../server/src/slips/find-slip.ts'
import { evidence, tern } from './records.ts'

const flexible = (texts: Readonly<Record<string, string>>) => evidence('mono', texts, 'flexible')

const stcOnly = Object.fromEntries(Object.entries(tern).filter(([pointer]) => !pointer.startsWith('/noct')))

test('a record in order is consistent', () => {
  expect(findSlip(flexible(tern))).toEqual({ kind: 'consistent' })
})

test('and so it is without all that may be left out', () => {
  const bare = Object.fromEntries(Object.entries(tern).filter(([pointer]) => /stc\/[pvi]|size/.test(pointer)))
  expect(findSlip(flexible(bare))).toEqual({ kind: 'consistent' })
})

test.each<{ slip: string; typed: Record<string, string>; fixed: string }>([
  { slip: 'decimal point moved', typed: { '/stc/voc': '2.21 V' }, fixed: '22.1 V' },
  { slip: 'decimal point dropped', typed: { '/stc/voc': '221 V' }, fixed: '22.1 V' },
  { slip: 'digits swapped', typed: { '/stc/vmp': '16.8 V' }, fixed: '18.6 V' },
  { slip: 'digits swapped', typed: { '/size/length': '1910 mm' }, fixed: '1190 mm' },
  { slip: 'a digit dropped', typed: { '/stc/imp': '5.2 A' }, fixed: '5.92 A' },
  { slip: 'a digit doubled', typed: { '/stc/pmax': '1110 W' }, fixed: '110 W' },
  { slip: 'a neighbouring key', typed: { '/stc/imp': '6.92 A' }, fixed: '5.92 A' },
  { slip: 'the sign lost', typed: { '/temperature_coefficients/pmax': '0.38 %/°C' }, fixed: '-0.38 %/°C' },
  { slip: 'a length unit', typed: { '/size/width': '540 cm' }, fixed: '540 mm' },
  { slip: 'a length unit', typed: { '/size/length': '1190 in' }, fixed: '1190 mm' },
  { slip: 'mV', typed: { '/stc/voc': '22.1 mV' }, fixed: '22.1 V' },
  { slip: 'kW', typed: { '/stc/pmax': '110 kW' }, fixed: '110 W' },
  { slip: 'milliamperes', typed: { '/stc/isc': '6310 A' }, fixed: '6.31 A' },
  { slip: 'a fraction as percent', typed: { '/temperature_coefficients/voc': '-0.0029 %/°C' }, fixed: '-0.29 %/°C' },
  { slip: 'V/°C as percent', typed: { '/temperature_coefficients/voc': '-0.064 %/°C' }, fixed: '-0.29 %/°C' },
  { slip: 'Imp at NOCT that no slip of the hand explains', typed: { '/noct/imp': '5.23 A' }, fixed: '4.71 A' },
  { slip: 'Vmp at NOCT that no slip of the hand explains', typed: { '/noct/vmp': '15.5 V' }, fixed: '17.2 V' },
  { slip: 'the end of a number missing', typed: { '/stc/efficiency': '17. %' }, fixed: '17.1 %' },
  { slip: 'a comma for the point', typed: { '/stc/vmp': '16,8 V' }, fixed: '18.6 V' },
])('$slip: $typed', ({ typed, fixed }) => {
  const pointer = Object.keys(typed)[0]
  expect(findSlip(flexible({ ...tern, ...typed }))).toMatchObject({
    kind: 'slip',
    pointer,
    text: fixed,
  })
})

test('a side is looked at in a record without Isc, too', () => {
  const { '/stc/isc': _, '/temperature_coefficients/isc': __, ...others } = tern
  expect(findSlip(flexible({ ...others, '/size/length': '1910 mm' }))).toMatchObject({
    kind: 'slip',
    pointer: '/size/length',
    text: '1190 mm',
  })
})

test.each(['60', '72'])('a cell count of %s is wrong, though several others would do', (typed) => {
  const verdict = findSlip(flexible({ ...tern, '/cells/in_series': typed }))
  const named = verdict.kind === 'slip' ? verdict.pointer : verdict.kind === 'disagree' ? verdict.pointers[0] : null
  expect(named).toBe('/cells/in_series')
})

test.each([
  { first: '/stc/voc', second: '/stc/vmp' },
  { first: '/stc/isc', second: '/stc/imp' },
  { first: '/temperature_coefficients/pmax', second: '/temperature_coefficients/voc' },
])('$first and $second exchanged are one correction of both', ({ first, second }) => {
  const verdict = findSlip(flexible({ ...tern, [first]: tern[second]!, [second]: tern[first]! }))
  expect(verdict).toMatchObject({
    kind: 'slip',
    pointer: first,
    text: tern[first],
    also: [{ pointer: second, text: tern[second] }],
  })
})

test('a voltage and a current exchanged keep the units of their fields', () => {
  // without a product to hold, as that of the two is right in either order
  const { '/stc/pmax': _, '/stc/efficiency': __, ...others } = stcOnly
  const typed = { '/stc/vmp': '5.92 V', '/stc/imp': '18.6 A' }
  expect(findSlip(flexible({ ...others, ...typed }))).toMatchObject({
    kind: 'slip',
    pointer: '/stc/vmp',
    text: '18.6 V',
    also: [{ pointer: '/stc/imp', text: '5.92 A' }],
  })
})

test.each([
  ['/stc/pmax', '81 W', '110 W'],
  ['/stc/imp', '4.74 A', '5.92 A'],
  ['/stc/isc', '5.11 A', '6.31 A'],
])('%s of the NOCT row, %s, is read as that', (pointer, typed, meant) => {
  const verdict = findSlip(flexible({ ...stcOnly, [pointer]: typed }))
  const all = verdict.kind === 'slip' ? [verdict, ...verdict.alternatives] : []
  expect(all.filter(({ why }) => why.say === 'valueAtNoct').map(({ text }) => text)).toContain(meant)
})

test('a correction keeps the unit and its spelling', () => {
  const typed = { ...tern, '/stc/voc': '2.21V' }
  expect(findSlip(flexible(typed))).toMatchObject({ kind: 'slip', text: '22.1V' })
})

test('a value that no slip of the hand explains is named without a correction', () => {
  const verdict = findSlip(flexible({ ...tern, '/stc/isc': '8.07 A', '/stc/imp': '5.92 A' }))
  expect(verdict.kind).not.toBe('consistent')
  expect(verdict.kind === 'slip' ? verdict.pointer : verdict.kind === 'disagree' && verdict.pointers[0]).toBe(
    '/stc/isc',
  )
})

test.each<{ of: string; typed: Record<string, string> }>([
  { of: 'Isc coefficient, which no other value shows', typed: { '/temperature_coefficients/isc': '0.06 %/°C' } },
  { of: 'NOCT', typed: { '/noct/temperature': '45 °C' } },
  { of: 'Voc by a rounding', typed: { '/stc/voc': '22.0 V' } },
])('another $of stays quiet', ({ typed }) => {
  expect(findSlip(flexible({ ...tern, ...typed })).kind).toBe('consistent')
})

test('certainties of a correction and its alternatives are shares of one whole', () => {
  const verdict = findSlip(flexible({ ...tern, '/stc/imp': '5.2 A' }))
  if (verdict.kind !== 'slip') throw new Error('no slip found')
  const all = [verdict, ...verdict.alternatives].map((one) => one.certainty)
  expect(all.every((share) => 0 < share && share <= 1)).toBe(true)
  expect(all.reduce((a, b) => a + b, 0)).toBeLessThanOrEqual(1 + 1e-9)
})

test.each([
  ['rigid', { kind: 'slip', pointer: '/stc/efficiency', text: '17.1 %' }],
  ['flexible', { kind: 'consistent' }],
])('an efficiency 1 %% too high on a %s panel, whose sheet may print that of the cells', (construction, verdict) => {
  expect(findSlip(evidence('mono', { ...tern, '/stc/efficiency': '18.1 %' }, construction))).toMatchObject(verdict)
})

test('a printed efficiency one step off is reported, though sheets may print that of the cells', () => {
  const framed = {
    '/stc/pmax': '220 W',
    '/stc/vmp': '26.7 V',
    '/stc/imp': '8.24 A',
    '/stc/voc': '33.3 V',
    '/stc/isc': '8.68 A',
    '/size/length': '1482 mm',
    '/size/width': '992 mm',
    '/cells/in_series': '54',
  }
  const printed = (efficiency: string) =>
    findSlip(evidence('poly', { ...framed, '/stc/efficiency': efficiency }, 'rigid'))
  expect(printed('15.0 %')).toEqual({ kind: 'consistent' })
  expect(printed('16.0 %')).toMatchObject({ kind: 'slip', pointer: '/stc/efficiency', text: '15.0 %' })
})

test('the power in the name is a witness', () => {
  const { '/stc/efficiency': _, ...few } = tern
  const typed = evidence('mono', { ...few, '/stc/pmax': '120 W' }, 'flexible')
  const shareOf110 = (named: number[]) => {
    const verdict = findSlip({ ...typed, named })
    if (verdict.kind !== 'slip') return 0
    const all = [verdict, ...verdict.alternatives]
    return all.find(({ pointer, text }) => pointer === '/stc/pmax' && text === '110 W')?.certainty ?? 0
  }
  expect(shareOf110([110])).toBeGreaterThan(0.9)
  expect(shareOf110([120])).toBeLessThan(0.5)
})

// ratings as a list of small panels has them, and no efficiency beside
test('a small framed panel of four by nine cells is quiet, and a side of it with a wrong digit is not', () => {
  const small = {
    '/stc/pmax': '90 W',
    '/stc/vmp': '17.8 V',
    '/stc/imp': '5.06 A',
    '/stc/voc': '22.1 V',
    '/stc/isc': '5.4 A',
    '/size/length': '1200 mm',
    '/size/width': '545 mm',
  }
  expect(findSlip(evidence('poly', small))).toEqual({ kind: 'consistent' })
  expect(findSlip(evidence('poly', { ...small, '/size/width': '55 mm' }))).toMatchObject({
    kind: 'disagree',
    pointers: ['/size/width'],
  })
})
