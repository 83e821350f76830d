import { cellTemperature } from '../../physics/mounting.ts'
import { usualAlpha } from '../../physics/coefficients.ts'
import { relative } from '../../values/inputs.ts'
import { rossOf } from '../../values/mounted.ts'
import { siteAt } from '../panel-at.ts'
import { stringsOf } from '../strings.ts'
import type { ResolvedArray, ResolvedMeasurement, ResolvedSystem } from '../resolved.ts'
import type { Accuracy } from './accuracy.ts'

/** What the strings of an array were measured at; null where nobody took it. An irradiance from the strings serves voltages alone. */
export interface MeasuredConditions {
  readonly irradiance: Taken | null
  /** Of the cells. */
  readonly temperature: Taken | null
}

/** A value, how sure it is, and where it comes from. */
export interface Taken {
  /** [W/m2] or [°C] */
  readonly value: number
  /** At 95 % confidence: a share of an irradiance, kelvins of a temperature. */
  readonly uncertainty: number
  readonly from: 'meter' | 'reference panel' | 'air' | 'strings'
}

/** Nobody measures strings in less sun, and no more falls on a panel [W/m2] (common practice, no source). */
const [dimmest, brightest] = [5, 15_000]
/** Of the rated current: what a string gives in less or in more sun says nothing about the sun [1] (common practice, no source). */
const [dimmestShare, brightestShare] = [0.05, 1.5]
const isSun = (irradiance: number) => dimmest < irradiance && irradiance < brightest
/** At the back of a panel [K]: a meter within 1 K, cells up to 3 K warmer than the back (common practice, no source). */
const atTheBack = 3
/** From the air [K]: the Ross model leaves out the wind, which cools by several kelvins (common practice, no source). */
const fromTheAir = 8
/** Of the rating of a reference panel, as its class and age leave it [1] (common practice, no source). */
const ratingOfReference = 0.03
/** From the currents of the strings themselves, which may all be low [1]: enough for a voltage, which hardly depends on it. */
const fromTheStrings = 0.2

export function conditionsOf(
  system: ResolvedSystem,
  array: ResolvedArray,
  { entry, reference }: ResolvedMeasurement,
  accuracy: Accuracy,
): MeasuredConditions {
  const cell = entry.cell_temperature
  const irradiance = typed() ?? byReference() ?? byStrings()
  return { irradiance, temperature: cell ? { value: cell.value, uncertainty: atTheBack, from: 'meter' } : byAir() }

  function typed(): Taken | null {
    const { irradiance: g } = entry
    return g && isSun(g.value) ? { value: g.value, uncertainty: accuracy.irradiance, from: 'meter' } : null
  }

  function byReference(): Taken | null {
    const { isc } = entry.reference
    const rated = reference?.record.stc.isc
    if (!isc || !rated || !(isc.value > 0) || !(rated.value > 0)) return null
    const alpha = relative(reference.record.temperature_coefficients.isc, rated) ?? usualAlpha
    const warmer = (cell?.value ?? 45) - 25
    const value = (1000 * isc.value) / (rated.value * (1 + alpha * warmer))
    const uncertainty = Math.hypot(accuracy.current, ratingOfReference)
    return isSun(value) ? { value, uncertainty, from: 'reference panel' } : null
  }

  function byStrings(): Taken | null {
    const strings = stringsOf(array)
    const each = entry.strings.flatMap(({ string, isc }) => {
      const rated = strings[(string?.value ?? 0) - 1]?.map(({ panel }) => panel?.record.stc.isc?.value ?? Infinity)
      const share = isc && rated ? Math.abs(isc.value) / Math.min(...rated) : 0
      return dimmestShare < share && share < brightestShare ? [share] : []
    })
    if (each.length === 0) return null
    return { value: 1000 * Math.max(...each), uncertainty: fromTheStrings, from: 'strings' }
  }

  function byAir(): Taken | null {
    const [panels] = array.panels
    const { air } = entry
    if (!air || !irradiance || irradiance.from === 'strings' || !panels?.panel) return null
    const k = rossOf(panels.panel.record, siteAt(system, panels))
    return { value: cellTemperature(air.value, irradiance.value, k), uncertainty: fromTheAir, from: 'air' }
  }
}
