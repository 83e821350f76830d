import type { QuantityKind } from '../quantities/quantity.ts'

export type RecordKind = 'panel' | 'controller' | 'battery' | 'climate' | 'system' | 'library'

/** One field as its JSON Schema describes it; the tables of these are generated from `schemas/source`. */
export interface FieldInfo {
  readonly key: string
  readonly title: string
  readonly description: string
  readonly type:
    'quantity' | 'text' | 'choice' | 'integer' | 'number' | 'boolean' | 'date' | 'group' | 'list' | 'map' | 'reference'
  readonly required?: true
  readonly examples?: readonly string[]
  /** How a datasheet calls it: Voc. */
  readonly symbol?: string
  /** quantity: what is measured, and the unit of a bare number */
  readonly quantity?: QuantityKind
  readonly unit?: string
  /** choice */
  readonly choices?: readonly { readonly value: string; readonly description: string }[]
  /** group */
  readonly fields?: readonly FieldInfo[]
  /** list, map */
  readonly item?: FieldInfo
  /** reference: the kind of record whose id, or whose fields, may stand here */
  readonly record?: RecordKind
  /** The derived value that a missing field costs. */
  readonly costs?: string
}
