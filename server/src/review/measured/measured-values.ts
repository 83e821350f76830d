import { formatIn } from '../../quantities/format.ts'
import type { Field } from '../../records/field.ts'
import type { InputShown, Value } from '../../values/value.ts'
import type { ResolvedSystem } from '../resolved.ts'
import type { Taken } from './conditions.ts'
import { differenceText } from './in-words.ts'
import { measuredOf } from './measured.ts'
import type { MeasuredFindings } from './measured-findings.ts'
import type { PowerLeft, Trend } from './power-left.ts'
import { namesOf, unitsOf, type Quantity, type Reading } from './string.ts'
import { inCatalogue } from '../../wording/phrase.ts'

const source = 'IEC 60891:2021, procedure 2, with the coefficients of the panel records'

/** What each measured value should be, at its field, and what is left of the power, at the date. */
export function measuredValues(system: ResolvedSystem): readonly Value[] {
  const { strings, trends } = measuredOf(system)
  return [
    ...strings.flatMap((one) => [...one.string.readings.values()].flatMap((reading) => expectedValue(one, reading))),
    ...trends.flatMap((trend) => trend.points.flatMap((point) => leftValue(trend, point))),
  ]
}

const formulas: Readonly<Record<Quantity, string>> = {
  voc: inCatalogue`sum over the string of Voc (1 + beta f (T - 25 °C) + 1/f - 1), f = 1 + B1 ln(1000/G) + B2 ln(1000/G)^2`,
  isc: inCatalogue`least over the string of Isc (G / 1000 W/m2) (1 + alpha (T - 25 °C))`,
  vmp: inCatalogue`sum over the string of Vmp, translated as Voc is, less the change of the drop at Rs`,
  imp: inCatalogue`least over the string of Imp (G / 1000 W/m2) (1 + Imp coefficient x (T - 25 °C))`,
}

function expectedValue({ string }: MeasuredFindings, { quantity, field, expected, off }: Reading): Value[] {
  if (expected === null) return []
  const unit = unitsOf[quantity]
  return [
    {
      id: `${field.pointer.slice(1, field.pointer.lastIndexOf('/'))}/expected_${quantity}`,
      label: `expected ${namesOf[quantity]}`,
      value: expected,
      unit,
      text: formatIn(expected, unit, 3),
      formula: formulas[quantity],
      inputs: [
        ...taken('G', string.conditions.irradiance, 'W/m2'),
        ...taken('T', string.conditions.temperature, 'degC'),
        measured(field),
      ],
      missing: [],
      source,
      uncertainty: off ? `${formatIn(off.uncertainty, '1', 2)}; measured ${differenceText(off.share)}` : null,
      pointer: field.pointer,
    },
  ]
}

const measured = (field: Field): InputShown => ({
  name: 'measured',
  value: field.value,
  unit: '',
  text: field.text,
  pointer: field.pointer,
})

function taken(name: string, one: Taken | null, unit: string): InputShown[] {
  if (!one) return []
  const from = one.from === 'meter' ? '' : ` from the ${one.from}`
  return [{ name, value: one.value, unit, text: `${formatIn(one.value, unit, 3)}${from}`, pointer: null }]
}

function leftValue({ crosses }: Trend, { date, years, left, uncertainty, warranted, strings }: PowerLeft): Value[] {
  const dated = strings[0]?.string.measurement.entry.date
  if (!dated) return []
  const promised = warranted === null ? 'no warranty that runs' : `warranted ${formatIn(warranted, '1', 3)}`
  const until = crosses === null ? '' : `, below the warranty from ${crosses}`
  return [
    {
      id: `${dated.pointer.slice(1, dated.pointer.lastIndexOf('/'))}/power_left`,
      label: inCatalogue`power left`,
      value: left,
      unit: '1',
      text: formatIn(left, '1', 2),
      formula: inCatalogue`Vmp x Imp over what the records expect, else Voc x Isc over theirs`,
      inputs: [
        { name: 'after', value: years, unit: 'years', text: `${years.toFixed(1)} years`, pointer: dated.pointer },
        { name: 'date', value: 0, unit: '', text: `${date}, ${promised}${until}`, pointer: null },
      ],
      missing: [],
      source,
      uncertainty: formatIn(uncertainty, '1', 2),
      pointer: dated.pointer,
    },
  ]
}
