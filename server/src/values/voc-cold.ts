import type { Derived } from './derived.ts'
import { beta, coldest, voc } from './inputs.ts'
import { inCatalogue } from '../wording/phrase.ts'

export const vocCold: Derived = {
  id: 'voc_cold',
  label: 'Voc on the coldest morning',
  unit: 'V',
  formula: inCatalogue`Voc x (1 + Voc coefficient x (T cold - 25 °C)), the cell as cold as the air`,
  source: 'temperature-coefficient method of US and IEC practice (NEC 690.7, IEC 62548; from memory)',
  pointer: '/temperature_coefficients/voc',
  needs: [voc, beta, coldest],
  compute: (v, b, air) => v * (1 + b * (air - 25)),
}
