import { inUsual } from './usual-units.ts'
import { unitsOf, type Bundle } from './bundle.ts'

/** A number with its unit, and with as many digits as it is worth. */
export interface Figure {
  readonly value: number
  readonly unit?: string
  /** Significant digits. */
  readonly digits?: number
  /** Decimals, where a number has a fixed last digit. */
  readonly decimals?: number
  /** The unit is that of another figure which follows, and is not said twice. */
  readonly bare?: true
}

/** In the units that people chose; what is converted has three digits where nothing else is asked for. Throws for what is no number, which is a mistake of the caller. */
export function figureInWords(
  { value: own, unit: metric = '', digits, decimals, bare }: Figure,
  bundle?: Bundle,
): string {
  if (!Number.isFinite(own)) throw new RangeError(`${own} is said as a number`)
  const { value, unit } = inUsual(own, metric, unitsOf(bundle))
  const shown =
    digits !== undefined
      ? Number(value.toPrecision(digits))
      : decimals !== undefined
        ? Number(value.toFixed(decimals))
        : unit === metric
          ? value
          : Number(value.toPrecision(3))
  return unit && !bare ? `${shown} ${unit}` : String(shown)
}
