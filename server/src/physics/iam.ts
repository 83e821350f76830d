import { radians } from './angles.ts'

/**
 * What of the beam gets through a face at an angle, against straight on.
 *
 *     IAM = (1 - exp(-cos(angle)/ar)) / (1 - exp(-1/ar))
 *
 * @param cosine  of the angle of incidence; 0 or less gives 0
 * @param ar      angular loss coefficient [1]; 0.16 to 0.17 for clean glass
 * @returns       [1]
 * @source N. Martin, J. M. Ruiz, Solar Energy Materials and Solar Cells 70 (2001) 25-38
 */
export function beamModifier(cosine: number, ar: number): number {
  return cosine <= 0 ? 0 : Math.expm1(-cosine / ar) / Math.expm1(-1 / ar)
}

/**
 * The same for light from the sky and from the ground, by tilt. A part of no view (ground on a level plane) gives 0.
 *
 * @param tilt  of the plane [°], 0 to 90
 * @param ar    angular loss coefficient [1]
 * @returns     [1], [1]
 * @source N. Martin, J. M. Ruiz, Progress in Photovoltaics 13 (2005) 75-84, c2 = 0.5 ar - 0.154
 */
export function diffuseModifiers(tilt: number, ar: number): { sky: number; ground: number } {
  const b = radians(tilt)
  const c1 = 4 / (3 * Math.PI)
  const c2 = 0.5 * ar - 0.154
  const through = (x: number) => 1 - Math.exp(-(c1 * x + c2 * x * x) / ar)
  const sky = Math.sin(b) + (Math.PI - b - Math.sin(b)) / (1 + Math.cos(b))
  if (tilt === 0) return { sky: through(sky), ground: 0 }
  return { sky: through(sky), ground: through(Math.sin(b) + (b - Math.sin(b)) / (1 - Math.cos(b))) }
}
