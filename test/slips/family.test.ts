import { expect, test } from 'vitest'
import { familyIndex, familySlip } from '../../server/src/slips/family.ts'
import { evidence, tern } from './records.ts'

/** The same panel in another power class. */
const step = (pmax: number, imp: number, isc: number, changes: Readonly<Record<string, string>> = {}) =>
  evidence('mono', {
    ...tern,
    '/stc/pmax': `${pmax} W`,
    '/stc/imp': `${imp.toFixed(2)} A`,
    '/stc/isc': `${isc.toFixed(2)} A`,
    '/stc/vmp': '18.7 V',
    '/stc/voc': '22.2 V',
    '/stc/efficiency': `${(pmax / 6.426).toFixed(1)} %`,
    ...changes,
  })
const ladder = [step(105, 5.62, 6.02), step(115, 6.15, 6.55)]
const slipped = { ...tern, '/temperature_coefficients/isc': '0.04 %/°C' }

test('a coefficient that two siblings print otherwise is named with them', () => {
  const odd = evidence('mono', slipped)
  expect(familySlip(odd, familyIndex([odd, ...ladder]))).toMatchObject({
    pointer: '/temperature_coefficients/isc',
    text: '0.05 %/°C',
    siblings: ladder,
  })
})

test('a family that agrees is quiet', () => {
  const even = evidence('mono', tern)
  expect(familySlip(even, familyIndex([even, ...ladder]))).toBeNull()
})

test.each([
  { reason: 'one sibling alone', others: ladder.slice(0, 1) },
  {
    reason: 'copies of the same model',
    others: [evidence('mono', tern), evidence('mono', { ...tern, '/stc/voc': '22.2 V' })],
  },
  {
    reason: 'two steps of another size',
    others: [105, 115].map((p) => step(p, p / 18.7, p / 17.5, { '/size/width': '560 mm' })),
  },
  {
    reason: 'siblings that disagree',
    others: [ladder[0]!, step(115, 6.15, 6.55, { '/temperature_coefficients/isc': '0.06 %/°C' })],
  },
  {
    reason: 'another NOCT too',
    others: ladder.map((l) => ({
      ...l,
      readings: { ...l.readings, '/noct/temperature': { value: 45, half: 0.5, text: '45 °C' } },
    })),
  },
])('$reason proves nothing', ({ others }) => {
  const odd = evidence('mono', slipped)
  expect(familySlip(odd, familyIndex([odd, ...others]))).toBeNull()
})
