import type { CalibratedPart } from './calibration.ts'

/** Mean and spread of a feature. */
type Band = readonly [mean: number, sd: number]

/** Of one technology: ln of Voc a cell [V], the coefficients of Pmax, Voc and Isc [%/K]. */
interface Usual {
  readonly voc: Band
  readonly gamma: Band
  readonly beta: Band
  readonly alpha: Band
}

/** Place of each among the features. */
const places = { voc: 0, gamma: 4, beta: 5, alpha: 6 } as const
const names = ['voc', 'gamma', 'beta', 'alpha'] as const

const usual = (voc: Band, gamma: Band, beta: Band): Usual => ({
  voc: [Math.log(voc[0]), voc[1]],
  gamma,
  beta,
  alpha: [0.047, 0.013],
})

/**
 * What cells of each technology are like. Sheets call cells of any kind monocrystalline, so that these are the widest. Common
 * practice, no source.
 */
const usualOf: Readonly<Record<string, Usual>> = {
  mono: usual([0.633, 0.04], [-0.41, 0.035], [-0.31, 0.025]),
  poly: usual([0.615, 0.03], [-0.43, 0.03], [-0.32, 0.022]),
  perc: usual([0.663, 0.028], [-0.37, 0.025], [-0.285, 0.02]),
  topcon: usual([0.7, 0.025], [-0.31, 0.022], [-0.255, 0.016]),
  hjt: usual([0.725, 0.025], [-0.27, 0.025], [-0.25, 0.016]),
  'back-contact': usual([0.695, 0.035], [-0.335, 0.035], [-0.265, 0.02]),
}

/** Share of records that name the wrong technology, or have unusual cells; estimated. */
const unlikeName = 0.08
/** Components that are hardly ever the likeliest cost time. */
const leastShare = 0.002

/**
 * The joint distribution of crystalline cells where the technology is known: each component multiplied with the normals of
 * what is usual, and its weight with how likely it has such cells.
 */
export function tilted(parts: readonly CalibratedPart[], technology: string | undefined): readonly CalibratedPart[] {
  const known = usualOf[technology ?? '']
  if (!known) return parts
  const own = parts.map((part) => names.reduce((one, name) => multiplied(one, places[name], known[name]), part))
  const sum = own.reduce((total, { weight }) => total + weight, 0)
  return [
    ...own.map((part) => ({ ...part, weight: ((1 - unlikeName) * part.weight) / sum })),
    ...parts.map((part) => ({ ...part, weight: unlikeName * part.weight })),
  ].filter(({ weight }) => weight > leastShare)
}

/** A multivariate normal times a normal of one feature. */
function multiplied({ weight, mean, covariance }: CalibratedPart, i: number, [usual, sd]: Band): CalibratedPart {
  const total = covariance[i]![i]! + sd * sd
  const off = usual - mean[i]!
  const gain = covariance.map((line) => line[i]! / total)
  return {
    weight: (weight * Math.exp((-off * off) / (2 * total))) / Math.sqrt(total),
    mean: mean.map((m, j) => m + gain[j]! * off),
    covariance: covariance.map((line, j) => line.map((v, k) => v - gain[j]! * covariance[i]![k]!)),
  }
}
