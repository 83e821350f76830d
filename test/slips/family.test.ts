import { expect, test } from 'vitest'
import { familyOf } from '../../server/src/slips/family/family.ts'
import { findSlip } from '../../server/src/slips/find-slip.ts'
import { evidence, tern } from './records.ts'

/** The same panel in another power class. */
const step = (pmax: number, imp: number, isc: number, changes: Readonly<Record<string, string>> = {}) =>
  evidence('mono', {
    ...tern,
    '/stc/pmax': `${pmax} W`,
    '/stc/imp': `${imp.toFixed(2)} A`,
    '/stc/isc': `${isc.toFixed(2)} A`,
    '/stc/efficiency': `${(pmax / 6.426).toFixed(1)} %`,
    '/noct/pmax': `${(0.736 * pmax).toFixed(0)} W`,
    '/noct/imp': `${(0.796 * imp).toFixed(2)} A`,
    ...changes,
  })
const ladder = [step(105, 5.65, 6.02), step(115, 6.18, 6.6)]
const verdictOf = (typed: Readonly<Record<string, string>>, others = ladder) => {
  const odd = evidence('mono', { ...tern, ...typed })
  return findSlip(odd, familyOf(odd, others))
}

test.each<{ slip: string; typed: Record<string, string>; fixed: string }>([
  { slip: 'a neighbouring key', typed: { '/temperature_coefficients/voc': '-0.39 %/°C' }, fixed: '-0.29 %/°C' },
  { slip: 'a neighbouring key', typed: { '/noct/temperature': '56 °C' }, fixed: '46 °C' },
  { slip: 'digits swapped', typed: { '/temperature_coefficients/isc': '0.5 %/°C' }, fixed: '0.05 %/°C' },
  { slip: 'another count', typed: { '/cells/in_series': '40' }, fixed: '36' },
])('$slip: $typed is named with the siblings that say otherwise', ({ typed, fixed }) => {
  expect(verdictOf(typed)).toMatchObject({
    kind: 'slip',
    pointer: Object.keys(typed)[0],
    text: fixed,
    siblings: ladder,
  })
})

test('a family that agrees is quiet', () => {
  expect(verdictOf({})).toEqual({ kind: 'consistent' })
})

test('a rating that stands in the column beside is reported as that', () => {
  expect(verdictOf({ '/stc/isc': '6.96 A' }, [...ladder, step(122, 6.56, 6.96)])).toMatchObject({
    pointers: ['/stc/isc'],
    from: { readings: { '/stc/pmax': { text: '122 W' } } },
  })
})

// what is left where a sibling's record was copied and all but one value typed anew
test.each<{ left: string; pointer: string; typed: string; meant: string }>([
  { left: 'efficiency', pointer: '/stc/efficiency', typed: '16.3 %', meant: '17.1 %' },
  { left: 'Pmax at NOCT', pointer: '/noct/pmax', typed: '77 W', meant: '81.0 W' },
])('$left of a sibling is named as that, not the values that it disagrees with', ({ pointer, typed, meant }) => {
  const verdict = verdictOf({ [pointer]: typed })
  expect(verdict).toMatchObject({ kind: 'slip', pointer, text: meant, from: ladder[0] })
})

test('the length of a sibling of another size is blamed, not the width or the power', () => {
  const larger = step(132, 7.1, 7.57, {
    '/size/length': '1300 mm',
    '/size/width': '600 mm',
    '/stc/efficiency': '17.2 %',
  })
  expect(verdictOf({ '/size/length': '1300 mm' }, [larger])).toMatchObject({
    kind: 'disagree',
    pointers: ['/size/length'],
    from: larger,
  })
})

test.each<{ rating: string; typed: Record<string, string>; fixed: string }>([
  { rating: 'Isc', typed: { '/stc/isc': '6.02 A' }, fixed: tern['/stc/isc']! },
  { rating: 'Voc', typed: { '/stc/voc': '21.4 V' }, fixed: tern['/stc/voc']! },
])('$rating of another model is fixed from the same model in another record', ({ typed, fixed }) => {
  const [pointer] = Object.keys(typed)
  const copy = evidence('mono', tern)
  const lenders = [step(105, 5.65, 6.02), step(107, 5.75, 6.14, { '/stc/voc': '21.4 V' })]
  const misread = evidence('mono', { ...tern, [pointer!]: '9.99' + fixed.slice(-2) })
  expect(verdictOf(typed, [...lenders, misread, copy, copy])).toMatchObject({
    kind: 'slip',
    pointer,
    text: fixed,
    siblings: [copy, copy],
  })
})

test('a rating whose ratio to the others no sibling has is reported, and the record alone would be quiet', () => {
  const typed = { '/stc/isc': '6.02 A' }
  expect(verdictOf(typed, [])).toEqual({ kind: 'consistent' })
  expect(verdictOf(typed)).toMatchObject({ kind: 'disagree', pointers: ['/stc/isc'], from: ladder[0] })
})

test('a family of one voltage, whose larger panels have larger cells, is quiet', () => {
  const larger = (pmax: number, length: string) => {
    const [imp, isc] = [pmax / 18.6, pmax / 17.4]
    return step(pmax, imp, isc, { '/size/length': length, '/stc/efficiency': '17.1 %' })
  }
  const family = [larger(110, '1190 mm'), larger(120, '1300 mm'), larger(130, '1410 mm'), larger(140, '1515 mm')]
  for (const own of family)
    expect(
      findSlip(
        own,
        familyOf(
          own,
          family.filter((one) => one !== own),
        ),
      ),
    ).toEqual({ kind: 'consistent' })
})

test.each<{ reason: string; changes: Record<string, string> }>([
  { reason: 'of another size', changes: { '/size/width': '620 mm', '/temperature_coefficients/voc': '-0.30 %/°C' } },
  { reason: 'that differ in more', changes: { '/noct/temperature': '44 °C', '/cells/in_series': '33' } },
])('records $reason are no family', ({ changes }) => {
  const own = evidence('mono', tern)
  expect(familyOf(own, [step(105, 5.65, 6.02, changes)])?.siblings ?? []).toEqual([])
})

test.each([
  { reason: 'another maker', named: { maker: 'Skua' } },
  { reason: 'another family', named: { family: 'Shearwater' } },
])('$reason is no sibling, however alike', ({ named }) => {
  const own = { ...evidence('mono', tern), maker: 'Petrel', family: 'Tern' }
  expect(familyOf(own, [{ ...ladder[0]!, ...named }])).toBeNull()
})

test('a family that is named needs less likeness', () => {
  const few = ([pointer]: [string, string]) => /stc|size|coefficients\/(pmax|voc)/.test(pointer)
  const thin = (texts: Readonly<Record<string, string>>) =>
    evidence('mono', Object.fromEntries(Object.entries(texts).filter(few)))
  const [own, other] = [thin(tern), thin({ ...tern, '/stc/pmax': '115 W', '/stc/imp': '6.18 A', '/stc/isc': '6.60 A' })]
  expect(familyOf(own, [other])).toBeNull()
  expect(familyOf({ ...own, family: 'Tern' }, [{ ...other, family: 'Tern' }])?.siblings).toHaveLength(1)
})

test.each([
  ['/temperature_coefficients/voc', '-2.9 %/°C'],
  ['/temperature_coefficients/pmax', '0.38 %/°C'],
  ['/noct/temperature', '446 °C'],
])('siblings that share a wrong %s do not vouch for it', (pointer, typed) => {
  const wrong = [step(105, 5.65, 6.02, { [pointer]: typed }), step(115, 6.18, 6.6, { [pointer]: typed })]
  expect(verdictOf({ [pointer]: typed }, wrong)).toMatchObject({ kind: 'slip', pointer })
})

test('differences of less than 1 % between siblings are no slip', () => {
  const near = [step(105, 5.66, 6.03, { '/stc/voc': '22.0 V' }), step(115, 6.17, 6.62, { '/stc/voc': '22.2 V' })]
  expect(verdictOf({}, near)).toEqual({ kind: 'consistent' })
  expect(verdictOf({ '/stc/isc': '6.35 A' }, near)).toEqual({ kind: 'consistent' })
  expect(verdictOf({ '/stc/voc': '22.25 V' }, near)).toEqual({ kind: 'consistent' })
})
