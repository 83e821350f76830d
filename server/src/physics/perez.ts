import { radians } from './angles.ts'

/** How bright the sky is around the sun and along the horizon, over its mean [1]. */
export interface SkyBrightness {
  /** F1, 0 to 1: share of the diffuse sun that comes from around the sun. */
  readonly aroundSun: number
  /** F2: what the horizon adds, below 0 where it is darker. */
  readonly horizon: number
}

/** Upper ends of the eight classes of clearness, and F11 F12 F13 F21 F22 F23 of each. */
const classes = [
  [1.065, -0.008, 0.588, -0.062, -0.06, 0.072, -0.022],
  [1.23, 0.13, 0.683, -0.151, -0.019, 0.066, -0.029],
  [1.5, 0.33, 0.487, -0.221, 0.055, -0.064, -0.026],
  [1.95, 0.568, 0.187, -0.295, 0.109, -0.152, -0.014],
  [2.8, 0.873, -0.392, -0.362, 0.226, -0.462, 0.001],
  [4.5, 1.132, -1.237, -0.412, 0.288, -0.823, 0.056],
  [6.2, 1.06, -1.6, -0.359, 0.264, -1.127, 0.131],
  [Infinity, 0.678, -0.327, -0.25, 0.156, -1.377, 0.251],
] as const

/**
 * Brightness of the sky around the sun and along the horizon.
 *
 * @param normal            beam across its rays [W/m2]
 * @param diffuse           on the horizontal [W/m2], above 0
 * @param zenithCosine      of the sun's zenith angle, above 0
 * @param extraterrestrial  across the rays [W/m2]
 * @source R. Perez, P. Ineichen, R. Seals, J. Michalsky, R. Stewart, Solar Energy 44 (1990) 271-289, composite of all sites;
 *         air mass: F. Kasten, A. T. Young, Applied Optics 28 (1989) 4735-4738
 */
export function skyBrightness(
  normal: number,
  diffuse: number,
  zenithCosine: number,
  extraterrestrial: number,
): SkyBrightness {
  const zenith = Math.acos(Math.min(1, zenithCosine))
  const k = 1.041 * zenith ** 3
  const clearness = ((diffuse + normal) / diffuse + k) / (1 + k)
  let at = 0
  while (at < 7 && clearness >= classes[at]![0]) at++
  const row = classes[at]!
  const brightness = (diffuse * airMass(zenithCosine, zenith)) / extraterrestrial
  return {
    aroundSun: Math.max(0, row[1] + row[2] * brightness + row[3] * zenith),
    horizon: row[4] + row[5] * brightness + row[6] * zenith,
  }
}

/** The least cosine of the zenith angle that the sky around the sun is divided by: 85°. */
export const leastCosine = Math.cos(radians(85))

/** Path of the sun's rays through the air over that from the zenith. */
function airMass(zenithCosine: number, zenith: number): number {
  return 1 / (zenithCosine + 0.50572 * (96.07995 - (zenith * 180) / Math.PI) ** -1.6364)
}
