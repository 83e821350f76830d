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

/** How a rating grows with another from one power class of a family to the next. */
export interface GrowthCalibration {
  /** The exponent. */
  readonly by: number
  /** Share and standard deviation of two normals about the growth; what is left is as without a sibling. */
  readonly spread: readonly (readonly [share: number, sd: number])[]
}

/** How often true siblings agree in a value, and how often the same model does when it is listed again. */
export interface AgreementCalibration {
  readonly same: number
  readonly ofCopies: number
}

/** What siblings let expect of each other. */
export interface SiblingCalibration {
  readonly growths: Readonly<Record<'imp' | 'isc' | 'voc', GrowthCalibration>>
  /** How often a rating is that of the same model listed again. */
  readonly copied: Readonly<Record<'vmp' | 'imp' | 'voc' | 'isc', number>>
  readonly shared: Readonly<Record<'gamma' | 'beta' | 'alpha' | 'noct' | 'cells', AgreementCalibration>>
}

export type Calibration = Readonly<Record<Group, GroupCalibration>> & { readonly siblings: SiblingCalibration }
