import { radians } from './angles.ts'

/** A plane: tilt from the horizontal and compass azimuth it faces (180 = south) [°]. Level planes face anywhere. */
export interface Plane {
  readonly tilt: number
  readonly azimuth: number
}

/**
 * Cosine of the angle between the sun's rays and a plane's normal; below 0 where the sun is behind it.
 *
 * @param plane    [°]
 * @param zenith   of the sun [°]
 * @param azimuth  of the sun, by compass [°]
 * @source J. A. Duffie, W. A. Beckman, 4th ed. (2013), eq. 1.6.3
 */
export function incidenceCosine(plane: Plane, zenith: number, azimuth: number): number {
  const z = radians(zenith)
  const b = radians(plane.tilt)
  return Math.cos(z) * Math.cos(b) + Math.sin(z) * Math.sin(b) * Math.cos(radians(azimuth - plane.azimuth))
}
