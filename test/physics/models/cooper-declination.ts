import { radians } from '../../../server/src/physics/angles.ts'

/**
 * Declination by the shorter formula, up to 1.3° off in October. For textbook figures, which are made with it.
 *
 *     declination = 23.45° sin(360° (284 + n)/365)
 *
 * @param day  n, of the year, 1 to 365
 * @returns    [°], north positive
 * @source P. I. Cooper, Solar Energy 12 (1969) 333-346
 */
export function cooperDeclination(day: number): number {
  return 23.45 * Math.sin(radians((360 * (284 + day)) / 365))
}
