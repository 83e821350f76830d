import { cellTemperature, rossCoefficient } from '../physics/mounting.ts'
import type { Derived } from './derived.ts'
import { hottest, mountingRise, noct } from './inputs.ts'

export const cellTemperatureHot: Derived = {
  id: 'cell_temperature_hot',
  label: 'cell temperature on a hot day',
  unit: 'degC',
  formula: 'T hot + k x 1000 W/m2, k = (NOCT + X - 20 °C) / 800 W/m2',
  source:
    'Ross 1981 with the installed-NOCT corrections of Fuentes, SAND85-0330 (1987): open rack 0, standoff 2, canvas 11, bonded 18 K',
  uncertainty: 'about ±5 K on a still day; canvas has no measurement of its own and is an estimate',
  at: '/noct/temperature',
  needs: [hottest, noct, mountingRise],
  compute: (air, noctTyped, rise) => cellTemperature(air, 1000, rossCoefficient(noctTyped, rise)),
}
