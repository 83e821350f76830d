import { formatNumber } from '../quantities/format.ts'
import { inUsual, type Units } from '../wording/usual-units.ts'

/** Quantities in SI units as a reader is used to them. */
export interface Written {
  /** Of a surface or a cable. */
  readonly metres: (metres: number) => string
  /** Of a panel or a hatch. */
  readonly short: (metres: number) => string
  readonly kilograms: (kilograms: number) => string
  readonly celsius: (degrees: number) => string
}

export const writtenIn: Readonly<Record<Units, Written>> = {
  metric: {
    metres: (m) => `${formatNumber(m, 3)} m`,
    short: (m) => `${formatNumber(1000 * m, 4)} mm`,
    kilograms: (kg) => `${formatNumber(kg, 3)} kg`,
    celsius: (c) => `${formatNumber(c, 2)} °C`,
  },
  us: {
    metres: (m) => `${formatNumber(usual(m, 'm'), 3)} ft`,
    short: (m) => `${usual(1000 * m, 'mm').toFixed(1)} in`,
    kilograms: (kg) => `${formatNumber(usual(kg, 'kg'), 3)} lb`,
    celsius: (c) => `${formatNumber(usual(c, '°C'), 3)} °F`,
  },
}

const usual = (value: number, unit: string) => inUsual(value, unit, 'us').value
