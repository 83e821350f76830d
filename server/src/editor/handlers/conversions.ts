import { fromBase } from '../../quantities/convert.ts'
import { alternatives, formatNumber } from '../../quantities/format.ts'
import type { Dimension } from '../../quantities/dimension.ts'
import { gaugeOf, gaugeText } from '../../quantities/gauge.ts'
import type { Measure } from '../../records/field.ts'
import type { ReadFile } from '../../records/read-file.ts'

/** The unit that people read beside another: sheets of two markets, meters and shops differ in these. */
const besides: Readonly<Record<string, string>> = {
  mm: 'in',
  cm: 'in',
  m: 'ft',
  in: 'mm',
  ft: 'm',
  kg: 'lb',
  g: 'oz',
  lb: 'kg',
  oz: 'g',
  '°C': '°F',
  '°F': '°C',
  K: '°C',
  AWG: 'mm2',
}

/** What each coefficient is a change of, and the unit in which sheets print it per degree. */
const changeOf: Readonly<Record<string, readonly [field: string, unit: string, absolute: Dimension] | undefined>> = {
  '/temperature_coefficients/pmax': ['/stc/pmax', 'W/°C', 'power-per-kelvin'],
  '/temperature_coefficients/voc': ['/stc/voc', 'mV/°C', 'voltage-per-kelvin'],
  '/temperature_coefficients/vmp': ['/stc/vmp', 'mV/°C', 'voltage-per-kelvin'],
  '/temperature_coefficients/isc': ['/stc/isc', 'mA/°C', 'current-per-kelvin'],
  '/temperature_coefficients/imp': ['/stc/imp', 'mA/°C', 'current-per-kelvin'],
}

/** The wire gauges next to a cross-section [m2]: `10 to 9 AWG` for 6 mm2; none where no such wire is made. */
function gaugesAround(area: number): readonly string[] {
  const gauge = gaugeOf(area)
  if (!(thickest - 0.1 <= gauge && gauge <= thinnest + 0.1)) return []
  const [thin, thick] = [gaugeText(Math.ceil(gauge - 0.1)), gaugeText(Math.floor(gauge + 0.1))]
  return [thin === thick ? thin : `${thin.replace(' AWG', '')} to ${thick}`]
}

/** 4/0 and 40 AWG: ASTM B258, from memory. */
const [thickest, thinnest] = [-3, 40]

/** A quantity in the one other unit that somebody would look for: `46.9 in`, `-64.1 mV/°C`; nothing where there is none. */
export function besideIt({ fields }: Pick<ReadFile, 'fields'>, { pointer, quantity }: Measure): readonly string[] {
  const [field, unit, absolute] = changeOf[pointer] ?? []
  const of = field && (fields.get(field) as Measure | undefined)?.value
  if (unit && absolute && of) {
    const { dimension, value } = quantity
    if (dimension === 'per-kelvin') return [`${formatNumber(fromBase(value * of, unit), 3)} ${unit}`]
    if (dimension === absolute) return [`${formatNumber((100 * value) / of, 3)} %/°C`]
  }
  if (quantity.unit === 'mm2') return gaugesAround(quantity.value)
  const wanted = besides[quantity.unit]
  return alternatives(quantity).flatMap(({ unit: other, text }) => (other === wanted ? [text] : []))
}
