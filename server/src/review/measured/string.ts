import type { Measure } from '../../records/field.ts'
import type { MeasurementEntry, ResolvedArray, ResolvedMeasurement, ResolvedPanels } from '../resolved.ts'
import type { MeasuredConditions } from './conditions.ts'
import type { Expected } from './panel-expected.ts'

export type Quantity = 'voc' | 'isc' | 'vmp' | 'imp'

/** The measured quantities, voltages before currents. */
export const quantities = ['voc', 'isc', 'vmp', 'imp'] as const satisfies readonly Quantity[]

export const namesOf = { voc: 'Voc', isc: 'Isc', vmp: 'Vmp', imp: 'Imp' } as const satisfies Record<Quantity, string>
export const unitsOf = { voc: 'V', isc: 'A', vmp: 'V', imp: 'A' } as const satisfies Record<Quantity, string>

/** A difference as a share, below 0 where the measured value is lower, and how far off it may be at 95 % confidence. */
export interface Difference {
  readonly share: number
  readonly uncertainty: number
}

/** One measured value. A current is taken without its sign, which only shows how the clamp was held. */
export interface Reading {
  readonly quantity: Quantity
  readonly field: Measure
  readonly value: number
  /** By the records; null where the conditions or the records say too little. */
  readonly expected: number | null
  readonly off: Difference | null
  /** Against the other strings of the same array at the same time. */
  readonly apart: Difference | null
}

/** One string of one measurement. */
export interface MeasuredString {
  readonly measurement: ResolvedMeasurement
  readonly entry: MeasurementEntry['strings'][number]
  readonly array: ResolvedArray
  /** From 1. */
  readonly number: number
  readonly panels: readonly ResolvedPanels[]
  readonly conditions: MeasuredConditions
  readonly expected: Expected
  readonly readings: ReadonlyMap<Quantity, Reading>
  /** Power at Vmp and Imp; null where they were not measured. */
  readonly power: PowerReading | null
  /** Difference that is no finding, as the settings say [1]. */
  readonly limit: number
}

/** Whether a value differs from the records by more than the limit, and by more than is uncertain. */
export const isOff = (off: Difference | null, limit: number): boolean =>
  off !== null && Math.abs(off.share) > Math.max(limit, off.uncertainty)

export interface PowerReading {
  /** [W] */
  readonly value: number
  readonly expected: number | null
  readonly off: Difference | null
}

/** Power of the string by the records [W]. */
export const powerExpected = ({ vmp, imp }: Expected): number | null =>
  vmp === null || imp === null ? null : vmp * imp

/** An array without an id is measured only where it is the only one. */
export const nameOf = ({ entry }: ResolvedArray): string => entry.id?.value ?? '1'
