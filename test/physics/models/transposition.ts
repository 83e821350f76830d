import { radians } from '../../../server/src/physics/angles.ts'
import type { PlaneIrradiance } from '../../../server/src/physics/transposition.ts'

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

/**
 * Sun on a tilted plane, part of the diffuse coming from around the sun.
 *
 *     sky = Id (A Rb + (1 - A)(1 + cos tilt)/2),  A = beam normal over extraterrestrial normal
 *
 * @param normal            beam across its rays [W/m2]
 * @param diffuse           on the horizontal [W/m2]
 * @param global            on the horizontal [W/m2]
 * @param cosine            of incidence, see `incidenceCosine`
 * @param zenithCosine      of the sun's zenith angle; limited to 0.01745 below
 * @param extraterrestrial  across the rays [W/m2]
 * @param tilt              of the plane [°]
 * @param albedo            of the ground [1]
 * @returns                 by origin
 * @source J. E. Hay, J. A. Davies, Proc. First Canadian Solar Radiation Data Workshop (1980) 59-72; Duffie & Beckman, 4th ed. (2013), section 2.16
 */
export function hayDavies(
  normal: number,
  diffuse: number,
  global: number,
  cosine: number,
  zenithCosine: number,
  extraterrestrial: number,
  tilt: number,
  albedo: number,
): PlaneIrradiance {
  const up = (1 + Math.cos(radians(tilt))) / 2
  const facing = Math.max(0, cosine)
  const around = normal / extraterrestrial
  const ratio = facing / Math.max(zenithCosine, 0.01745)
  return {
    beam: normal * facing,
    sky: diffuse * (around * ratio + (1 - around) * up),
    ground: global * albedo * (1 - up),
  }
}
