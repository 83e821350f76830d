/** One complaint of a compiled JSON Schema validator. */
export interface Complaint {
  readonly instancePath: string
  readonly keyword: string
  readonly params: Readonly<Record<string, unknown>>
}
interface Validator {
  (value: unknown): boolean
  errors?: Complaint[] | null
}
export const panel: Validator
export const controller: Validator
export const battery: Validator
export const climate: Validator
export const system: Validator
export const library: Validator
