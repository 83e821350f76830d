import { formatIn } from '../quantities/format.ts'
import { inUsual } from '../wording/usual-units.ts'
import { translated, unitsOf, type Bundle } from '../wording/bundle.ts'
import type { Value } from './value.ts'

/** A derived value as people read it, in the units that they chose; its formula and inputs stay as they are worked with. */
export const valueText = (
  { value, unit, text }: Pick<Value, 'value' | 'unit' | 'text'>,
  bundle: Bundle | undefined,
): string => (value === null ? translated(text, bundle) : (converted(value, unit, bundle) ?? text))

/** Three digits, as a sheet prints its ratings (common practice, no source). */
function converted(value: number, unit: string, bundle: Bundle | undefined): string | null {
  const usual = inUsual(value, unit, unitsOf(bundle))
  return usual.unit === unit ? null : formatIn(usual.value, usual.unit, 3)
}
