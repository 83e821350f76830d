import { kinds } from './kinds.ts'
import type { QuantityKind } from './quantity.ts'
import { unitKey } from './unit-text.ts'
import { findUnit, units } from './units.ts'

/** Whether more characters may follow a quantity that somebody is typing: another digit, or the rest of its unit. */
export function isHalfTyped(text: string, kind: QuantityKind): boolean {
  const typed = text.trimEnd()
  if (typed === '' || growing.test(typed)) return true
  if (kind === 'temperature-range' && !/\d\D+\d/.test(typed)) return true
  const unit = unitKey(
    spaceless(typed)
      .split(/[\d\s.,]/)
      .at(-1)!,
  )
  const { dimensions, units: usual } = kinds[kind]
  const own = (spelling: string) => dimensions.includes(findUnit(spelling)!.dimension)
  const isKnown = units.has(unit) && own(unit)
  const longer = isKnown || kind === 'money' ? usual : [...units.keys()].filter(own)
  return longer.some((one) => one.length > unit.length && one.toLowerCase().startsWith(unit.toLowerCase()))
}

/** A digit, a decimal sign, a sign, or what stands between two numbers. */
const growing = /[\d.,+\-–−±~/x×(#'"]$/

/** `% / °C` is `%/°C`; the gap before a unit goes with it. */
const spaceless = (text: string) => text.replace(/\s+/g, '')
