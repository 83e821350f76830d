import { coldVoltageFactor } from '../../server/src/physics/cold-voltage.ts'
import { cableFigures, inside, onRoof } from '../../server/src/review/cable-figures.ts'
import { figuresOf } from '../../server/src/review/figures-of.ts'
import { resolved } from '../review/resolved.ts'
import { about, printed, type Check } from './check.ts'

const nec = 'US National Electrical Code, table 690.7(A) (as quoted in an open code)'
const copper = 'IEC 60228, table 3 and its temperature factor; Ohm (own arithmetic)'

const panel =
  '{ stc: { pmax: 110 W, vmp: 18.6 V, imp: 5.92 A, voc: 22.1 V, isc: 6.31 A }, temperature_coefficients: { voc: -0.29 %/°C } }'
const two = figuresOf(
  resolved(`
site: { coldest: -10 °C }
arrays: [{ panels: [{ panel: ${panel}, count: 2 }], wiring: { in_series: 2, in_parallel: 1 } }]`),
).arrays[0]!

const cabin = resolved(`
kind: cabin
arrays: [{ cable: { size: 6 mm2, length: 8 m } }]
battery: { cable: { size: 10 mm2, length: 5 m } }`)
const roof = (voltage: number) => cableFigures(cabin, cabin.arrays[0]!.entry.cable, onRoof, 20, voltage)!
const bank = cableFigures(cabin, cabin.system.battery.cable, inside, 30, 12.8)!

const bands = [
  [24, 1.02],
  [15, 1.04],
  [10, 1.06],
  [5, 1.08],
  [0, 1.1],
  [-5, 1.12],
  [-6, 1.14],
  [-15, 1.16],
  [-16, 1.18],
  [-25, 1.2],
  [-30, 1.21],
  [-31, 1.23],
  [-40, 1.25],
] as const

export const reviewChecks: readonly Check[] = [
  ...bands.map(([air, factor]) => about(`factor on Voc at ${air} °C`, nec, coldVoltageFactor(air), factor, 0)),
  printed(
    'two panels of 22.1 V, -0.29 %/K, at -10 °C, V',
    'definition of the coefficient (own arithmetic)',
    two.voc_cold_v!,
    '48.69',
  ),
  printed(
    '1.25 x Isc of one string, A',
    'US National Electrical Code 690.8 (as quoted by trade articles)',
    two.isc_design_a!,
    '7.8875',
  ),
  printed('6 mm2, 8 m one way, 70 °C, milliohm', copper, 1000 * roof(12).resistance_ohm, '63.2'),
  printed('the same, 20 A at 12 V, %', copper, roof(12).drop_pct!, '10.5'),
  printed('the same, 20 A at 36 V, %', copper, roof(36).drop_pct!, '3.5'),
  printed('10 mm2, 5 m one way, 60 °C, milliohm', copper, 1000 * bank.resistance_ohm, '22.10'),
  printed('the same, 30 A at 12.8 V, %', copper, bank.drop_pct!, '5.2'),
]
