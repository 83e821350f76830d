/** A point of a current-voltage curve. */
export interface CurvePoint {
  /** [V] */
  readonly v: number
  /** [A] */
  readonly i: number
}

/** What a curve depends on. */
export interface Conditions {
  /** In the plane of the panel [W/m2], above 0. */
  readonly irradiance: number
  /** Of the cells [°C]. */
  readonly temperature: number
}

/** Standard test conditions. */
export const stc: Conditions = { irradiance: 1000, temperature: 25 }
