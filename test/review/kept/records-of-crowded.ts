/** Records that the crowded system names, each with something left out. */
export const recordsOfCrowded: Readonly<Record<string, string>> = {
  'tern.panel.yaml': `format: 1
name: Tern 110
construction: flexible
cells: { technology: mono, in_series: 36, bypass_diodes: 2 }
stc: { pmax: 110 W, tolerance: 0/+3 %, vmp: 18.6 V, imp: 5.92 A, voc: 22.1 V, isc: 6.31 A }
temperature_coefficients: { pmax: -0.38 %/°C, voc: -0.29 %/°C, isc: 0.05 %/°C }
noct: { temperature: 46 °C }
size: { length: 1190 mm, width: 540 mm }
weight: 2.2 kg
limits: { system_voltage: 60 V, series_fuse: 15 A, bend: 30 deg, operating_temperature: -40 to 85 °C }
price: { amount: 289 USD }
warranty: { exclusions: [marine use, walking on the panel], output: [{ years: 5, at_least: 90 % }, { years: 10, at_least: 80 % }] }
`,
  'wren.panel.yaml': `format: 1
name: Wren 55
construction: flexible
cells: { technology: mono, in_series: 36, bypass_diodes: 1 }
stc: { pmax: 55 W, vmp: 18.5 V, imp: 2.98 A, voc: 22 V, isc: 3.18 A }
size: { length: 680 mm, width: 540 mm }
weight: 1.2 kg
limits: { bend_radius: 900 mm, series_fuse: 5 A }
`,
  'plain.panel.yaml': `format: 1
name: Plain 50
construction: rigid
cells: { technology: poly, in_series: 36 }
stc: { pmax: 50 W, vmp: 17.5 V, imp: 2.86 A, voc: 21.8 V, isc: 3.1 A }
temperature_coefficients: { pmax: -0.45 %/°C, voc: -0.33 %/°C }
size: { length: 640 mm, width: 540 mm }
mounting_frame: { weight: 0.8 kg }
price: { amount: 62 EUR }
`,
  'mppt.controller.yaml': `format: 1
name: Seeker 15
type: mppt
efficiency: 96 %
input: { max_voltage: 75 V, max_short_circuit_current: 12 A, max_power: 220 W, above_battery: 5 V }
output: { max_current: 15 A, battery_voltages: [12 V, 24 V] }
price: { amount: 120 USD }
`,
  'larger.controller.yaml': `format: 1
name: Seeker 30
type: mppt
input: { max_voltage: 150 V, max_short_circuit_current: 35 A, max_power: 440 W }
output: { max_current: 30 A, battery_voltages: [12 V, 24 V] }
price: { amount: 260 USD }
`,
  'pwm.controller.yaml': `format: 1
name: Switch 5
type: pwm
input: { max_voltage: 50 V }
output: { max_current: 5 A, battery_voltages: [12 V] }
`,
  'lead.battery.yaml': `format: 1
name: Ballast 110
chemistry: agm
nominal_voltage: 12 V
capacity: { amount: 110 Ah, over: 20 h }
charge: { max_current: 25 A, voltage: 14.4 V, temperature_compensation: -24 mV/K }
discharge: { max_current: 100 A }
round_trip_efficiency: 82 %
weight: 33 kg
price: { amount: 240 USD }
`,
}
