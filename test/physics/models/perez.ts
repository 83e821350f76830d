import { radians } from '../../../server/src/physics/angles.ts'
import { leastCosine, type SkyBrightness } from '../../../server/src/physics/perez.ts'
import type { PlaneIrradiance } from './transposition.ts'

/**
 * Sun on a tilted plane, the sky brighter around the sun and brighter or darker along the horizon.
 *
 *     sky = Id ((1 - F1)(1 + cos tilt)/2 + F1 max(0, cosine)/max(cos zenith, cos 85°) + F2 sin tilt), at least 0
 *
 * @param normal        beam across its rays [W/m2]
 * @param diffuse       on the horizontal [W/m2]
 * @param global        on the horizontal [W/m2]
 * @param cosine        of incidence, see `incidenceCosine`
 * @param zenithCosine  of the sun's zenith angle
 * @param brightness    see `skyBrightness`
 * @param tilt          of the plane [°]
 * @param albedo        of the ground [1]
 * @returns             by origin
 * @source R. Perez et al., Solar Energy 44 (1990) 271-289; `planeLight` works the same out for whole years
 */
export function perez(
  normal: number,
  diffuse: number,
  global: number,
  cosine: number,
  zenithCosine: number,
  { aroundSun, horizon }: SkyBrightness,
  tilt: number,
  albedo: number,
): PlaneIrradiance {
  const up = (1 + Math.cos(radians(tilt))) / 2
  const facing = Math.max(0, cosine)
  const around = (aroundSun * facing) / Math.max(zenithCosine, leastCosine)
  return {
    beam: normal * facing,
    sky: Math.max(0, diffuse * ((1 - aroundSun) * up + around + horizon * Math.sin(radians(tilt)))),
    ground: global * albedo * (1 - up),
  }
}
