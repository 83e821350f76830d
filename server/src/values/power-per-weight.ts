import type { Derived } from './derived.ts'
import { frameWeight, pmax, weight } from './inputs.ts'
import { inCatalogue } from '../wording/phrase.ts'

export const powerPerWeight: Derived = {
  id: 'power_per_weight',
  label: 'power per weight',
  unit: 'W/kg',
  formula: inCatalogue`Pmax / (weight + mounting frame, where one is given)`,
  source: 'definition',
  pointer: '/weight',
  needs: [pmax, weight, frameWeight],
  compute: (p, m, frame) => p / (m + (Number.isNaN(frame) ? 0 : frame)),
}
