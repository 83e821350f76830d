import { expect, test } from 'vitest'
import { frameOf } from '../../server/src/slips/density/coherence.ts'
import { index } from '../../server/src/slips/evidence.ts'
import { findSlip } from '../../server/src/slips/find-slip.ts'
import { calibration } from '../../server/src/slips/model/calibration.generated.ts'
import { finerGain, perFurtherDecimal } from '../../server/src/slips/typos/finer.ts'
import { evidence } from './records.ts'

const framed = {
  '/stc/vmp': '30.1 V',
  '/stc/imp': '8.31 A',
  '/stc/voc': '37.4 V',
  '/stc/isc': '8.83 A',
  '/size/length': '1650 mm',
  '/size/width': '992 mm',
}
const [gamma, beta, alpha] = ['pmax', 'voc', 'isc'].map((name) => `/temperature_coefficients/${name}`) as [
  string,
  string,
  string,
]

test.each([
  ['as the one beside it', { [gamma]: '-0.43 %/°C', [beta]: '-0.32 %/°C' }, 0],
  ['one more than the one beside it', { [gamma]: '-0.443 %/°C', [beta]: '-0.32 %/°C' }, perFurtherDecimal],
  ['three, as the one beside it', { [gamma]: '-0.443 %/°C', [beta]: '-0.320 %/°C' }, 0],
  ['a last zero is left out beside it', { [gamma]: '-0.43 %/°C', [beta]: '-0.3 %/°C' }, 0],
  ['V/°C beside it', { [gamma]: '-0.43 %/°C', [beta]: '-0.120 V/°C' }, 0],
])('decimals of a coefficient: %s', (_, texts, gain) => {
  const frame = frameOf(evidence('poly', { ...framed, ...texts }), calibration.poly, true, null)
  expect(finerGain(frame, index.gamma)).toBe(gain)
})

test('four decimals of an Isc coefficient are rare on glass and not on what bends', () => {
  const gainOf = (construction: string, text: string) =>
    finerGain(
      frameOf(evidence('poly', { ...framed, [alpha]: text }, construction), calibration.poly, true, null),
      index.alpha,
    )
  expect(gainOf('rigid', '0.060 %/°C')).toBe(0)
  expect(gainOf('rigid', '0.0663 %/°C')).toBe(perFurtherDecimal)
  expect(gainOf('flexible', '0.0663 %/°C')).toBe(0)
})

test('the power of the class beside is seen by Vmp times Imp alone', () => {
  const verdictOf = (pmax: string) => findSlip(evidence('poly', { ...framed, '/stc/pmax': pmax }))
  expect(verdictOf('250 W')).toEqual({ kind: 'consistent' })
  expect(verdictOf('265 W')).toMatchObject({ kind: 'slip', pointer: '/stc/pmax', text: '250 W' })
})
