import { radians } from '../../../server/src/physics/angles.ts'

/** Sun on a plane by where it comes from [W/m2]. */
export interface PlaneIrradiance {
  readonly beam: number
  readonly sky: number
  readonly ground: number
}

/**
 * Sun on a tilted plane, the sky alike all over.
 *
 * @param normal      beam across its rays [W/m2]
 * @param diffuse     on the horizontal [W/m2]
 * @param global      on the horizontal [W/m2]
 * @param cosine      of incidence, see `incidenceCosine`
 * @param tilt        of the plane [°]
 * @param albedo      of the ground [1]
 * @returns           by origin; beam not yet lessened by reflection at the face
 * @source B. Y. H. Liu, R. C. Jordan, Solar Energy 4 (1960) 1-19; Duffie & Beckman, 4th ed. (2013), eq. 2.15.1
 */
export function isotropic(
  normal: number,
  diffuse: number,
  global: number,
  cosine: number,
  tilt: number,
  albedo: number,
): PlaneIrradiance {
  const up = (1 + Math.cos(radians(tilt))) / 2
  return { beam: normal * Math.max(0, cosine), sky: diffuse * up, ground: global * albedo * (1 - up) }
}
