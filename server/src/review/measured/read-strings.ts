import type { Conditions } from '../../physics/translation/point.ts'
import type { ResolvedMeasurement, ResolvedPanels, ResolvedSystem } from '../resolved.ts'
import { stringsOf } from '../strings.ts'
import { accuracyOf, type Accuracy } from './accuracy.ts'
import { conditionsOf, type MeasuredConditions } from './conditions.ts'
import { stringExpected, type Expected } from './panel-expected.ts'
import {
  powerExpected,
  quantities,
  type Difference,
  type MeasuredString,
  type Quantity,
  type Reading,
} from './string.ts'

/** Every string that was measured and is there, each value compared with the records. */
export function readStrings(system: ResolvedSystem): readonly MeasuredString[] {
  const accuracy = accuracyOf(system)
  return system.measurements.flatMap((measurement) => ofMeasurement(system, measurement, accuracy))
}

function ofMeasurement(
  system: ResolvedSystem,
  measurement: ResolvedMeasurement,
  accuracy: Accuracy,
): readonly MeasuredString[] {
  const { array, entry: taken } = measurement
  if (!array) return []
  const strings = stringsOf(array)
  const conditions = conditionsOf(system, array, measurement, accuracy)
  return taken.strings.flatMap((entry) => {
    const panels = strings[(entry.string?.value ?? 0) - 1]
    if (!panels || !entry.string) return []
    const by = comparison(panels, conditions, accuracy)
    const readings = new Map<Quantity, Reading>()
    for (const quantity of quantities) {
      const field = entry[quantity]
      if (!field || Math.abs(field.value) > beyondAllMeters) continue
      const value = quantity === 'isc' || quantity === 'imp' ? Math.abs(field.value) : field.value
      const expected = by.expected[quantity]
      readings.set(quantity, { quantity, field, value, expected, off: by.off(value, quantity), apart: null })
    }
    const [vmp, imp] = [readings.get('vmp'), readings.get('imp')]
    const power =
      vmp && imp
        ? {
            value: vmp.value * imp.value,
            expected: powerExpected(by.expected),
            off: by.offPower(vmp.value * imp.value),
          }
        : null
    return [
      {
        measurement,
        entry,
        array,
        number: entry.string.value,
        panels,
        conditions,
        expected: by.expected,
        readings,
        power,
        limit: accuracy.limit,
      },
    ]
  })
}

/** No more is computed with [V, A]. */
const beyondAllMeters = 1e12

/** Where the cells are when nobody took their temperature: good enough for a current, which hardly depends on it [°C]. */
const somewhereWarm = { value: 45, uncertainty: 25 }

const nothing: Expected = { voc: null, isc: null, vmp: null, imp: null }

/** What a string should give in the conditions of the day, and how sure a comparison with it is. */
function comparison(panels: readonly ResolvedPanels[], conditions: MeasuredConditions, accuracy: Accuracy) {
  const { irradiance, temperature } = conditions
  if (!irradiance) return { expected: nothing, off: () => null, offPower: () => null }
  const records = panels.map(({ panel }) => panel?.record)
  const cell = temperature ?? somewhereWarm
  const give = (g: number, t: number) => stringExpected(records, { irradiance: g, temperature: t } satisfies Conditions)
  const here = give(irradiance.value, cell.value)
  const brighter = give(irradiance.value * (1 + irradiance.uncertainty), cell.value)
  const warmer = give(irradiance.value, cell.value + cell.uncertainty)
  const volts = temperature ? { voc: here.voc, vmp: here.vmp } : {}
  const amperes = irradiance.from === 'strings' ? {} : { isc: here.isc, imp: here.imp }
  const expected = { ...nothing, ...volts, ...amperes }
  const rating = Math.max(0, ...panels.map(({ panel }) => lowerTolerance(panel?.record.stc.tolerance)))
  const meters = { voc: accuracy.voltage, vmp: accuracy.voltage, isc: accuracy.current, imp: accuracy.current }
  return { expected, off, offPower }

  function off(value: number, quantity: Quantity): Difference | null {
    const uncertain = quantity === 'isc' || quantity === 'imp' ? Math.hypot(meters[quantity], rating) : meters[quantity]
    return difference(value, (one) => one[quantity], uncertain)
  }

  function offPower(value: number): Difference | null {
    return difference(value, powerExpected, Math.hypot(accuracy.voltage, accuracy.current, rating))
  }

  function difference(value: number, of: (one: Expected) => number | null, meter: number): Difference | null {
    const [wanted, sun, heat] = [of(expected), of(brighter), of(warmer)]
    if (wanted === null || sun === null || heat === null || !(wanted > 0 && wanted < Infinity)) return null
    return { share: value / wanted - 1, uncertainty: Math.hypot(meter, sun / wanted - 1, heat / wanted - 1) }
  }
}

/** How far a panel may be below its rating from the start [1]. */
export function lowerTolerance(tolerance: ToleranceField | undefined): number {
  return tolerance && tolerance.quantity.dimension === 'ratio' ? Math.max(0, -tolerance.value) : 0
}

interface ToleranceField {
  readonly value: number
  readonly quantity: { readonly dimension: string }
}
