import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fitDiode, type Ratings } from '../../server/src/physics/fit-diode.ts'
import { sheetComplaint } from './sheet-complaint.ts'
import { shuntlessDiode } from './models/shuntless-diode.ts'

const tern: Ratings = {
  pmax: 110,
  vmp: 18.6,
  imp: 5.92,
  voc: 22.1,
  isc: 6.31,
  cells: 36,
  alpha: 5e-4,
  beta: -2.9e-3,
  gamma: -3.8e-3,
}

test('an ordinary sheet has a diode of ideality near 1 and meets all slopes', () => {
  const fit = fitDiode(tern)
  expect(fit).toMatchObject({ ok: true, params: { gammaResidual: 0 } })
  expect(sheetComplaint(tern)).toBeNull()
})

test.each<[string, Partial<Ratings>, string]>([
  ['decimal point lost', { voc: 2.21 }, 'Vmp is 841.6 % of Voc'],
  ['Isc and Imp swapped', { isc: 5.92, imp: 6.31 }, 'Pmax is 93.7 % of Vmp x Imp'],
  ['Isc below Imp', { isc: 5.8 }, 'Imp is 102.1 % of Isc'],
  ['Vmp in the lower half', { voc: 40 }, 'Vmp is 46.5 % of Voc'],
  ['half-cut cells counted twice', { cells: 72 }, 'sharper than so many cells'],
  ['minus sign missing', { beta: 2.9e-3 }, 'Voc must fall'],
  ['percent for a share', { gamma: -0.38 }, 'temperature coefficient of Pmax'],
  ['not a number', { isc: NaN }, 'Isc must be a number above 0'],
])('%s: says why', (_, slip, why) => {
  const fit = fitDiode({ ...tern, ...slip })
  expect(fit.ok ? 'fits' : fit.why).toContain(why)
})

test('a slope of Pmax out of reach is left over, not forced', () => {
  const fit = fitDiode({ ...tern, gamma: -9e-3 })
  expect(fit.ok && fit.params.gammaResidual).toBeLessThan(-1e-3)
  expect(fit.ok && Math.abs(fit.params.rsSlope)).toBeLessThanOrEqual(0.02)
})

test('the shuntless diode of the 54-cell module of Villalva et al. (2009) has ideality 1.41', () => {
  const { a, rs } = shuntlessDiode(26.3, 7.61, 32.9, 8.21)
  expect(a / (54 * 0.025693)).toBeCloseTo(1.4105, 3)
  expect(rs).toBeCloseTo(0.1945, 3)
})

describe('any sheet', () => {
  const share = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true })

  test('credible ones: a fit that reproduces the sheet, or a reason', () => {
    const sheet = fc
      .record({
        voc: share(0.5, 200),
        isc: share(0.01, 20),
        v: share(0.5, 1),
        i: share(0.5, 1),
        stretch: share(0.95, 1.05),
        cell: share(0.3, 1.2),
        alpha: share(-1e-3, 2e-3),
        beta: share(-6e-3, -5e-4),
        gamma: share(-1e-2, 1e-3),
      })
      .map(({ voc, isc, v, i, stretch, cell, alpha, beta, gamma }) => {
        const [vmp, imp] = [v * voc, i * isc]
        return { pmax: vmp * imp * stretch, vmp, imp, voc, isc, cells: Math.ceil(voc / cell), alpha, beta, gamma }
      })
    fc.assert(
      fc.property(sheet, (ratings) => sheetComplaint(ratings) === null),
      { numRuns: 2000 },
    )
  })

  test('wild ones', () => {
    const any = fc.double()
    const sheet = fc.record({
      pmax: any,
      vmp: any,
      imp: any,
      voc: any,
      isc: any,
      cells: fc.option(any),
      alpha: any,
      beta: any,
      gamma: any,
    })
    fc.assert(
      fc.property(sheet, (ratings) => sheetComplaint(ratings) === null),
      { numRuns: 2000 },
    )
  })
})
