import type { Measure } from '../records/field.ts'

/** A quantity as it was typed, with the unit that a bare number was read in; nothing where there is none. */
export function said(measure: Measure | undefined): string {
  if (!measure) return ''
  const { text, quantity } = measure
  return quantity.unitDefaulted && quantity.unit !== '' ? `${text} ${quantity.unit}` : text
}
