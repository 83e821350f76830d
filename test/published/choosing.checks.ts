import { compareOnSurface } from '../../server/src/review/choosing/compare-on-surface.ts'
import { resolved } from '../review/resolved.ts'
import { about, type Check } from './check.ts'

/** Madison, 43° north: mean daily sun on a level plane [MJ/m2]. */
const sun = [6.44, 9.89, 12.86, 16.05, 21.36, 23.04, 22.58, 20.33, 14.59, 10.48, 6.37, 5.74]
const twelve = (value: string) => new Array(12).fill(value).join(', ')

const system = resolved(`
site:
  latitude: 43 deg
  climate:
    sun: [${sun.map((mj) => `${(mj / 3.6).toFixed(4)} kWh/m2`).join(', ')}]
    air: { mean_high: [${twelve('0 °C')}], mean_low: [${twelve('-8 °C')}] }
surfaces: [{ id: roof, size: { length: 1100 mm, width: 600 mm }, mounting: bonded, tilt: 0 deg }]
arrays:
  - id: main
    panels: [{ count: 1, surface: roof, panel: { construction: flexible, stc: { pmax: 100 W, imp: 5.5 A, vmp: 18.2 V, voc: 22 V, isc: 5.9 A }, temperature_coefficients: { pmax: -0.4 %/°C }, noct: { temperature: 46 °C }, size: { length: 1000 mm, width: 500 mm }, price: { amount: 200 USD }, warranty: { output: [{ years: 5, at_least: 80 % }] } } }]
    wiring: { in_series: 1, in_parallel: 1 }
`)
const [array] = system.arrays
const panel = array!.panels[0]!.panel!
const [row] = compareOnSurface(
  { system, surface: system.system.surfaces[0]!, array: array! },
  [{ id: 'own', panel }],
  undefined,
  [],
)

/**
 * By hand. The worst month is December with 5.74 MJ/m2 = 1.594 kWh/m2 a day. The sun is 66° from overhead at noon: of what comes at that
 * angle 92 % enters the glass, of the sky's light 95 %, together 0.925. By day the air is about -2 °C and the mean hour of sun has 280 W/m2;
 * bonded cells are 0.055 K for each W/m2 warmer, 13 °C, which is worth 1 + 0.004 x 12 = 1.046. Dirt and joints leave 0.95, a
 * controller that seeks the maximum power point 0.96:
 *
 *     100 W x 1.594 h x 0.925 x 1.046 x 0.95 x 0.96 = 141 Wh
 *
 * The year has 1437 kWh/m2, in sun of 550 W/m2 on average and higher in the sky: 0.95 enters, cells are at 28 °C, which leaves 0.988:
 * 100 W x 1437 h x 0.95 x 0.988 x 0.95 x 0.96 = 123 kWh. 200 USD over five years at the 80 % that are warranted, which are as many as four full
 * years: 200 / (4 x 123) = 0.407 USD a kWh.
 */
const book =
  'sun: Duffie & Beckman, 4th ed. (2013), example 2.19.1; the rest worked by hand with mean values, good for some 5 %'

export const choosingChecks: readonly Check[] = [
  about('worst month of a bonded 100 W panel, Madison, Wh a day', book, Math.min(...row!.wh_day!), 141, 7),
  about('energy of its year, kWh', book, row!.kwh_year!, 123, 6),
  about('price of its warranted energy, USD/kWh', book, row!.price_per_kwh!.amount, 0.407, 0.02),
]
