/** One input of a derived value, as a hover shows it. */
export interface InputShown {
  /** Voc, k, T hot */
  readonly name: string
  readonly value: number
  readonly unit: string
  readonly text: string
  /** Set when the input is a field of the record. */
  readonly pointer: string | null
}

/** A derived value that explains itself. Hover, inlay hints, `values` and the report show the same object. */
export interface Value {
  readonly id: string
  readonly label: string
  /** In SI units as `unit` says; null when something is missing. */
  readonly value: number | null
  readonly unit: string
  /** For people: 17.1 %, 91.3 °C. */
  readonly text: string
  readonly formula: string
  readonly inputs: readonly InputShown[]
  /** What would have to be known; empty when the value is there. */
  readonly missing: readonly string[]
  readonly source: string
  /** How far the model itself may be off, where that is published or known. */
  readonly uncertainty: string | null
  /** The field at whose line the value belongs. */
  readonly pointer: string
}
