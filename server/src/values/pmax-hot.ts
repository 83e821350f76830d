import { atTemperature } from '../physics/coefficients.ts'
import type { Derived } from './derived.ts'
import { gamma, hottest, mountingRise, noct, pmax } from './inputs.ts'
import { cellTemperatureInSun } from './mounted.ts'

export const pmaxHot: Derived = {
  id: 'pmax_hot',
  label: 'power on a hot day',
  unit: 'W',
  formula: 'Pmax x (1 + Pmax coefficient x (cell_temperature_hot - 25 °C))',
  source: 'linear temperature coefficient, IEC 60891 (from memory); cell temperature as under cell_temperature_hot',
  uncertainty: 'about ±2 % from the cell temperature alone',
  pointer: '/stc/pmax',
  needs: [pmax, gamma, hottest, noct, mountingRise],
  compute: (p, g, air, noctTyped, rise) => atTemperature(p, g, cellTemperatureInSun(air, noctTyped, rise)),
}
