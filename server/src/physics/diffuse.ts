import { radians } from './angles.ts'

/**
 * Diffuse share of a day's sun on the horizontal, by its clearness and the season.
 *
 * @param clearness  KT of the day
 * @param sunset     hour angle of sunset [°]
 * @returns          [1]
 * @source D. G. Erbs, S. A. Klein, J. A. Duffie, Solar Energy 28 (1982) 293-302
 */
export function diffuseDay(clearness: number, sunset: number): number {
  const k = clearness
  if (sunset <= 81.4) return k < 0.715 ? 1 - 0.2727 * k + 2.4495 * k ** 2 - 11.9514 * k ** 3 + 9.3879 * k ** 4 : 0.143
  return k < 0.722 ? 1 + 0.2832 * k - 2.5557 * k ** 2 + 0.8448 * k ** 3 : 0.175
}

/**
 * Diffuse share of a month's mean sun on the horizontal. The curves are for a clearness of 0.3 to 0.8; outside, the value at
 * the end is taken.
 *
 * @param clearness  KT of the month
 * @param sunset     hour angle of sunset on its mean day [°]
 * @returns          [1]
 * @source D. G. Erbs, S. A. Klein, J. A. Duffie, Solar Energy 28 (1982) 293-302 (coefficients from memory)
 */
export function diffuseMonth(clearness: number, sunset: number): number {
  const k = Math.min(0.8, Math.max(0.3, clearness))
  return sunset <= 81.4
    ? 1.391 - 3.56 * k + 4.189 * k ** 2 - 2.137 * k ** 3
    : 1.311 - 3.022 * k + 3.427 * k ** 2 - 1.821 * k ** 3
}

/**
 * Share of a day's global sun that falls in one hour, by hour angle at the hour's middle. The shares of all hours add up to
 * 1 within 1 %, so whoever hands out a day's sun divides by their sum.
 *
 * @param hourAngle  [°]
 * @param sunset     [°], above 0
 * @returns          per hour [1]; 0 at night
 * @source M. Collares-Pereira, A. Rabl, Solar Energy 22 (1979) 155-164
 */
export function globalShare(hourAngle: number, sunset: number): number {
  const day = daySun(sunset)
  const cosine = Math.cos(radians(hourAngle))
  return globalOverDiffuse(day, cosine) * diffuseAt(day, cosine)
}

/**
 * Share of a day's diffuse sun that falls in one hour: as the extraterrestrial sun does.
 *
 * @param hourAngle  [°]
 * @param sunset     [°], above 0
 * @returns          per hour [1]; 0 at night
 * @source B. Y. H. Liu, R. C. Jordan, Solar Energy 4 (1960) 1-19
 */
export function diffuseShare(hourAngle: number, sunset: number): number {
  return diffuseAt(daySun(sunset), Math.cos(radians(hourAngle)))
}

/** What the shares of all hours of a day have in common: worked out once a day, where a year has 8760 hours. */
export interface DaySun {
  readonly a: number
  readonly b: number
  readonly cosSunset: number
  /** sin w - w cos w, for the hour angle w of sunset */
  readonly whole: number
}

/** @param sunset  hour angle [°], above 0 */
export function daySun(sunset: number): DaySun {
  const w = radians(sunset)
  const late = Math.sin(radians(sunset - 60))
  const cosSunset = Math.cos(w)
  return { a: 0.409 + 0.5016 * late, b: 0.6609 - 0.4767 * late, cosSunset, whole: Math.sin(w) - w * cosSunset }
}

/** `diffuseShare`, by the cosine of the hour angle. */
export function diffuseAt({ cosSunset, whole }: DaySun, cosine: number): number {
  return cosine <= cosSunset ? 0 : ((Math.PI / 24) * (cosine - cosSunset)) / whole
}

/** `globalShare` over `diffuseShare`, by the cosine of the hour angle. */
export function globalOverDiffuse({ a, b }: DaySun, cosine: number): number {
  return Math.max(0, a + b * cosine)
}
