import { resolved } from './resolved.ts'

const bay = `{ latitude: 43.5 deg, sun: [1.6, 2.5, 3.9, 4.8, 5.7, 6.2, 6.1, 5.4, 4.3, 2.8, 1.8, 1.4],
    air: { mean_high: [12, 13, 15, 17, 20, 23, 25, 26, 24, 20, 15, 12], mean_low: [5, 5, 7, 9, 12, 15, 17, 17, 15, 12, 8, 5] } }`

export const lithium =
  '{ chemistry: lifepo4, nominal_voltage: 12.8 V, capacity: { amount: 100 Ah }, charge: { max_current: 80 A }, round_trip_efficiency: 95 % }'
export const lead =
  '{ chemistry: flooded, nominal_voltage: 12 V, capacity: { amount: 200 Ah }, usable_depth: 50 %, charge: { max_current: 40 A, voltage: 14.6 V }, round_trip_efficiency: 80 % }'
export const seeking = '{ type: mppt, efficiency: 97 %, input: { max_voltage: 250 V }, output: { max_current: 60 A } }'
export const switching = '{ type: pwm, efficiency: 99 %, input: { max_voltage: 50 V }, output: { max_current: 60 A } }'

/** One array on one battery, with what tests turn. */
export const example = ({
  count = 2,
  strings = 1,
  cable = 6,
  coldest = -10,
  load = 25,
  parallel = 1,
  tilt = 0,
  battery = lithium,
  controller = seeking,
  other = '[]',
}) =>
  resolved(`
kind: cabin
site:
  coldest: ${coldest} °C
  hottest: 35 °C
  climate: ${bay}
surfaces: [{ id: roof, size: { length: 9 m, width: 3 m }, mounting: standoff, tilt: ${tilt} deg, azimuth: 180 deg }]
arrays:
  - id: main
    panels:
      - panel:
          stc: { pmax: 110 W, vmp: 18.6 V, imp: 5.92 A, voc: 22.1 V, isc: 6.31 A }
          cells: { technology: mono, in_series: 36 }
          temperature_coefficients: { pmax: -0.38 %/°C, voc: -0.29 %/°C, isc: 0.05 %/°C }
          noct: { temperature: 46 °C }
          size: { length: 1190 mm, width: 540 mm }
        count: ${count * strings}
        surface: roof
    wiring: { in_series: ${count}, in_parallel: ${strings} }
    controller: ${controller}
    cable: { size: ${cable} mm2, length: 8 m, insulation: 90 °C }
battery:
  battery: ${battery}
  in_parallel: ${parallel}
loads: [{ name: fridge, power: ${load} W, hours: 24 }]
other_sources: ${other}`)
