import { accuracyOf } from './accuracy.ts'
import { conditionsOf } from './conditions.ts'
import { panelExpected } from './panel-expected.ts'
import { stc } from '../../physics/translation/point.ts'
import { phrase, type Phrase } from '../../wording/phrase.ts'
import type { ResolvedMeasurement, ResolvedSystem } from '../resolved.ts'

/** What a measurement or the records lack, and which comparison that costs. */
export interface Lacking {
  readonly conditions: 'sun' | 'cells' | 'both' | null
  readonly records: readonly { readonly what: Phrase; readonly costs: Phrase }[]
}

export function lackingOf(system: ResolvedSystem, measurement: ResolvedMeasurement): Lacking | null {
  const { array, entry } = measurement
  if (!array || entry.strings.length === 0) return null
  const { irradiance, temperature } = conditionsOf(system, array, measurement, accuracyOf(system))
  const [sun, cells] = [!irradiance || irradiance.from === 'strings', !temperature]
  const given = array.panels.flatMap(({ panel }) => (panel ? [panelExpected(panel.record, stc)] : []))
  const takesPower = entry.strings.some(({ vmp, imp }) => vmp && imp)
  const records = [
    ...(given.some(({ voc }) => voc === null)
      ? [{ what: phrase`the Voc coefficient`, costs: phrase`its voltages are compared between strings only` }]
      : given.some(({ imp }) => imp === null) && takesPower
        ? [{ what: phrase`a rating at maximum power`, costs: phrase`its power is not compared` }]
        : []),
    ...(takesPower && array.panels.some(({ panel }) => panel && panel.record.warranty.output.length === 0)
      ? [{ what: phrase`the output warranty`, costs: phrase`the power left is not compared with it` }]
      : []),
  ]
  return { conditions: sun && cells ? 'both' : sun ? 'sun' : cells ? 'cells' : null, records }
}
