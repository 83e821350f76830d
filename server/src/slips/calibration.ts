/** A mixture of normal distributions: weight, mean, standard deviation. */
export type Mixture = readonly (readonly [weight: number, mean: number, sd: number])[]

/** One component of the mixture of multivariate t distributions that the features follow. */
export interface CalibratedPart {
  readonly weight: number
  readonly mean: readonly number[]
  readonly covariance: readonly (readonly number[])[]
}

/** How true records of one group of technologies hang together. Features are those of `features.ts`, in their order. */
export interface GroupCalibration {
  readonly parts: readonly CalibratedPart[]
  /** Share of records in which nothing is odd, then per coordinate the share in which that one is. */
  readonly regular: number
  readonly odd: readonly number[]
  /** ln(area / cells), or ln(area) where cells are not counted alike [m2]. */
  readonly cellArea: Mixture
  /** ln(longer / shorter side). */
  readonly aspect: Mixture
  /** ln(Vmp Imp / Pmax) beyond rounding. */
  readonly product: Mixture
}

export type Group = 'mono' | 'poly' | 'thin'
export type Calibration = Readonly<Record<Group, GroupCalibration>>
