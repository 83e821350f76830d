import { estimateCoefficients } from '../../server/src/physics/coefficients.ts'
import { boltzmannVolt } from '../../server/src/physics/constants.ts'
import { diodeAt } from '../../server/src/physics/diode-model.ts'
import { fitDiode } from '../../server/src/physics/fit-diode.ts'
import { solveAtIdeality } from '../../server/src/physics/fit-resistances.ts'
import { bracketedRoot } from '../../server/src/physics/root.ts'
import { currentAt, maxPower, openCircuit } from '../../server/src/physics/single-diode.ts'
import { shortCircuit } from '../physics/models/short-circuit.ts'
import { about, printed, relative, type Check } from './check.ts'
import { explicitDiode } from '../physics/models/explicit-diode.ts'

const villalva =
  'Villalva, Gazoli, Ruppert Filho, IEEE Trans. Power Electronics 24 (2009) 1198, 200 W module of 54 cells (numbers as quoted in open codes)'
const anchors54 = { vmp: 26.3, imp: 7.61, voc: 32.9, isc: 8.21 }
const slopes54 = { alpha: 0.0032 / 8.21, beta: -0.123 / 32.9 }
const vt54 = 54 * boltzmannVolt * 298.15
const theirs54 = { il: 8.214, i0: 9.825e-8, rs: 0.221, rsh: 415.405, a: 1.3 * vt54 }

const fit54 = fitDiode({ ...anchors54, pmax: 200.143, cells: 54, ...slopes54, gamma: -0.0047 })
if (!fit54.ok) throw new Error(fit54.why)
const stc54 = diodeAt(fit54.params, 1000, 25)
const best54 = maxPower(stc54)

/** Their way: `a` such that the curve translated by 2 K has the Voc of the coefficient, with the gap of silicon. */
const fitTheirWay = (anchors: typeof anchors54, alphaA: number, betaV: number) => {
  const modelAt = (a: number) => {
    const solution = solveAtIdeality(anchors, a)
    if (solution === null) throw new Error(`no solution at a = ${a}`)
    return { ...solution, ilSlope: alphaA, gap: 1.121, rsSlope: 0, gammaResidual: 0 }
  }
  const miss = (a: number) => openCircuit(diodeAt(modelAt(a), 1000, 27)) - (anchors.voc + 2 * betaV)
  const low = 0.035 * anchors.voc
  const high = 0.043 * anchors.voc
  return modelAt(bracketedRoot(miss, low, high, miss(low), miss(high)))
}
const sixty = fitTheirWay({ vmp: 31, imp: 8.71, voc: 38.3, isc: 9.43 }, 0.005658, -0.13788)
const desoto =
  'De Soto, Klein, Beckman, Solar Energy 80 (2006) 78-88; numbers: pvlib-python 6382338, tests/ivtools/sdm/test_desoto.py (1e-4)'

const batzelisRatings = {
  vmp: 42.57,
  imp: 15.27,
  voc: 50.26,
  isc: 15.98,
  alpha: 0.007351 / 15.98,
  beta: -0.120624 / 50.26,
}
const explicit = explicitDiode(batzelisRatings)
const batzelis =
  'Batzelis, IEEE J. Photovoltaics 7 (2017) 1400-1409; numbers: pvlib-python 6382338, tests/ivtools/sdm/test_desoto.py, test_fit_desoto_batzelis'
const expected = estimateCoefficients(50.26, 42.57, batzelisRatings.alpha, batzelisRatings.beta)
const derived = 'Batzelis (2017), eqs. 9, 10, 27, 28, own arithmetic from the same ratings'

export const fitChecks: readonly Check[] = [
  about('54 cells: Pmax of the fit', villalva, best54.p, 200.143, 1e-6),
  about(
    '54 cells: Vmp of the fit, stretched with Imp by what Pmax differs from Vmp x Imp',
    villalva,
    best54.v,
    26.3,
    1e-6,
  ),
  about('54 cells: Voc of the fit', villalva, openCircuit(stc54), 32.9, 1e-9),
  about('54 cells: Isc of the fit', villalva, shortCircuit(stc54), 8.21, 1e-9),
  about(
    '54 cells: their parameters give their power to the three figures of rs',
    villalva,
    maxPower(theirs54).p,
    200.143,
    0.05,
  ),
  about('54 cells: current of their parameters at Vmp', villalva, currentAt(theirs54, 26.3), 7.61, 0.005),
  about(
    '54 cells: rs at their ideality 1.3; they meet power alone',
    villalva,
    solveAtIdeality(anchors54, 1.3 * vt54)!.rs,
    0.221,
    0.012,
  ),
  relative(
    '54 cells at 800 W/m2, 47 °C: two published methods lie 1.6 % apart',
    `${villalva}; their translation, own arithmetic`,
    maxPower(diodeAt(fit54.params, 800, 47)).p,
    142.104,
    0.02,
  ),
  relative('60 cells: light current', desoto, sixty.il, 9.45232, 1e-4),
  relative('60 cells: saturation current', desoto, sixty.i0, 3.2246e-10, 1e-4),
  relative('60 cells: series resistance', desoto, sixty.rs, 0.297814, 1e-4),
  relative('60 cells: shunt resistance', desoto, sixty.rsh, 125.798, 1e-4),
  relative('60 cells: modified ideality', desoto, sixty.a, 1.59128, 1e-4),
  relative('explicit: a', batzelis, explicit.a, 1.7257632483733483, 1e-12),
  relative('explicit: light current', batzelis, explicit.il, 15.985408866796396, 1e-12),
  relative('explicit: saturation current', batzelis, explicit.i0, 3.594308384705643e-12, 1e-11),
  relative('explicit: shunt resistance', batzelis, explicit.rsh, 389.4379947026243, 1e-10),
  relative('explicit: series resistance', batzelis, explicit.rs, 0.13181590981241956, 1e-10),
  printed('coefficient of Imp, %/K', derived, expected.alphaImp * 100, '0.02373'),
  printed('coefficient of Vmp, %/K', derived, expected.betaVmp * 100, '-0.30553'),
  printed('coefficient of Pmax, %/K', derived, expected.gamma * 100, '-0.28180'),
]
