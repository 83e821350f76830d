import { resolved } from './resolved.ts'

/** 62° north, highs at or below 0 °C from November to March. */
export const north = `{ latitude: 62 deg, sun: [0.3, 1.0, 2.4, 4.0, 5.2, 5.6, 5.2, 3.9, 2.3, 1.0, 0.4, 0.15],
    air: { mean_high: [-6, -5, 0, 5, 12, 17, 20, 18, 12, 5, -1, -4], mean_low: [-14, -13, -9, -4, 2, 8, 11, 9, 4, -1, -7, -12] } }`
export const inland = `{ latitude: 45 deg, sun: [1.3, 2.2, 3.6, 4.7, 5.6, 6.3, 6.5, 5.5, 4.1, 2.6, 1.5, 1.1],
    air: { mean_high: [6, 8, 13, 17, 22, 26, 29, 28, 23, 17, 10, 6], mean_low: [-2, -1, 3, 7, 12, 16, 18, 17, 13, 8, 3, -1] } }`

const sheet = (pmax: number, vmp: number, imp: number, voc: number, isc: number, cells: number) =>
  `{ stc: { pmax: ${pmax} W, vmp: ${vmp} V, imp: ${imp} A, voc: ${voc} V, isc: ${isc} A }, cells: { technology: mono, in_series: ${cells} }, temperature_coefficients: { pmax: -0.38 %/°C, voc: -0.29 %/°C, isc: 0.05 %/°C }, size: { length: 1 m, width: 0.6 m } }`

export const strong = sheet(100, 18, 5.56, 22, 5.95, 36)
export const weak = sheet(60, 18, 3.33, 22, 3.56, 36)
export const high = sheet(110, 36, 3.06, 44, 3.27, 72)

/** Single panels in the order of their wiring. */
export const system = ({
  climate = inland,
  panels = [strong],
  series = 1,
  tilt = 60,
  battery = '',
  lithium = 100,
  loads = '[{ name: all, power: 10 W, hours: 24 }]',
}) =>
  resolved(`
kind: cabin
site: { climate: ${climate}, coldest: -30 °C, hottest: 35 °C }
surfaces: [{ id: roof, size: { length: 9 m, width: 3 m }, mounting: open rack, tilt: ${tilt} deg, azimuth: 180 deg }]
arrays:
  - panels:
${panels.map((panel) => `      - { panel: ${panel}, count: 1, surface: roof }`).join('\n')}
    wiring: { in_series: ${series}, in_parallel: ${panels.length / series} }
    controller: { type: mppt, efficiency: 97 %, input: { max_voltage: 250 V }, output: { max_current: 60 A } }
battery:
  battery: { chemistry: lifepo4, nominal_voltage: 12.8 V, capacity: { amount: ${lithium} Ah }, charge: { max_current: 80 A, lowest_temperature: 0 °C } }
  ${battery}
loads: ${loads}`)
