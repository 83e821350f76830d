import type { Phrase } from '../wording/phrase.ts'
import type { Dimension } from './dimension.ts'

/**
 * What a field of a record may hold. Most kinds are one number of one dimension; the three coefficients also take the
 * absolute form of their dimension, and two kinds are a pair of numbers.
 */
export type QuantityKind =
  | Exclude<Dimension, 'per-kelvin' | 'power-per-kelvin' | 'voltage-per-kelvin' | 'current-per-kelvin'>
  | 'power-coefficient' // %/°C, 1/K, ppm/K or W/K
  | 'voltage-coefficient' // … or mV/K, V/°C
  | 'current-coefficient' // … or mA/K, A/°C
  | 'temperature-range' // -40..85 °C
  | 'tolerance' // 0/+5 %, ±3 %, +5/-0 W

/** A number with its unit, as printed and as it is computed with. */
export interface Quantity {
  readonly kind: QuantityKind
  readonly dimension: Dimension
  /** In the base unit of the dimension. The lower one of a pair. */
  readonly value: number
  /** The upper one of a pair; absent for one number. */
  readonly upper?: number
  /** The unit's usual symbol (`mV/K`, `in`, `USD`), even where it was typed in another way or defaulted. */
  readonly unit: string
  /** True where nothing was typed behind the number and the schema's default unit stepped in. */
  readonly unitDefaulted: boolean
  /** Half a unit of the last printed digit, in the base unit: 18.60 V gives 0.005. */
  readonly half: number
}

/** Why a text is no such quantity, on the exact characters. */
export interface QuantityProblem {
  readonly code:
    | 'no-number'
    | 'not-given' // n/a, TBD, -
    | 'unknown-unit'
    | 'wrong-dimension'
    | 'missing-unit'
    | 'two-numbers'
    | 'ambiguous-comma'
    | 'misplaced-sign'
  /** One sentence, with what was typed and what was expected in it. */
  readonly message: Phrase
  /** Offsets inside the text that was read. */
  readonly start: number
  readonly end: number
  readonly fixes: readonly Fix[]
}

/** Another text for the whole field. */
export interface Fix {
  readonly text: string
  /** Completes "18.6 V: decimal comma written as a point". */
  readonly why: Phrase
  readonly certainty: 'same' | 'guess'
}

/** A harmless peculiarity of a text that was read all the same: a decimal comma, a wrong degree sign. */
export interface SpellingNote {
  readonly code: 'decimal-comma' | 'spelling'
  readonly message: Phrase
  readonly start: number
  readonly end: number
  readonly fixes: readonly Fix[]
}

export type Reading =
  | { readonly quantity: Quantity; readonly notes: readonly SpellingNote[]; readonly problem?: undefined }
  | { readonly quantity?: undefined; readonly problem: QuantityProblem }
