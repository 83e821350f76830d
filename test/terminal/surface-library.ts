import { readFileSync } from 'node:fs'
import { expect } from 'vitest'
import type { SurfaceRow } from '../../server/src/review/choosing/row.ts'
import { scratch, wattproof } from './run.ts'

export const panel = ({ pmax = 110, length = 1190, width = 540, more = '' } = {}) => `format: 1
name: Any ${pmax}
construction: flexible
stc: { pmax: ${pmax} W, vmp: 18.6 V, imp: ${(pmax / 18.6).toFixed(2)} A, voc: 22.1 V, isc: ${(pmax / 17.4).toFixed(2)} A }
temperature_coefficients: { pmax: -0.38 %/°C, voc: -0.29 %/°C, isc: 0.05 %/°C }
size: { length: ${length} mm, width: ${width} mm }
${more}`

export const controller = (volts: number) =>
  `format: 1\nname: C${volts}\ntype: mppt\ninput: { max_voltage: ${volts} V, max_short_circuit_current: 35 A, above_battery: 5 V }\noutput: { max_current: 30 A, battery_voltages: [12 V] }\nefficiency: 97 %\n`

export const system = (surface = '', limits = '{}') => `format: 1
name: A van   # as typed
kind: vehicle
site: { climate: example-bay, coldest: -5 °C, hottest: 33 °C }
surfaces:
  - { id: roof, size: { length: 2.6 m, width: 1.7 m }, mounting: bonded, tilt: 0 deg${surface} }
  - { id: bonnet, size: { length: 0.2 m, width: 0.2 m } }
arrays:
  - id: main
    panels: [{ panel: 'small', count: 2, surface: roof }] # for now
    wiring: { in_series: 2, in_parallel: 1 }
    controller: c100
    cable: { size: 6 mm2, length: 6 m, insulation: 90 °C }
battery: { battery: bank, in_series: 1, in_parallel: 2 }
loads: [{ name: fridge, power: 45 W, hours: 12, supply: dc }]
limits: ${limits}
`

export const priced = 'weight: 2.2 kg\nprice: { amount: 289 USD }\nwarranty: { output: [{ years: 5, at_least: 80 % }] }'

export const van = (text = system(), more: Record<string, string> = {}) =>
  scratch({
    'wattproof.yaml': 'format: 1\nname: Ours\n',
    'small.panel.yaml': panel({ pmax: 55, length: 590, more: priced }),
    'large.panel.yaml': panel({ more: priced }),
    'c100.controller.yaml': controller(100),
    'bank.battery.yaml': readFileSync('samples/systems/batteries/example-lfp-100.battery.yaml', 'utf8'),
    'example-bay.climate.yaml': readFileSync('samples/systems/climates/example-bay.climate.yaml', 'utf8'),
    'van.system.yaml': text,
    ...more,
  })

export const run = (cwd: string, ...args: string[]) =>
  wattproof(['compare', 'van.system.yaml', '--surface', 'roof', ...args], { cwd })
export const rowsOf = (cwd: string, ...args: string[]): SurfaceRow[] => {
  const { out, err } = run(cwd, '--format', 'json', ...args)
  expect(err).toBe('')
  return JSON.parse(out).rows
}
