import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import type { Finding } from '../../server/src/findings/finding.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { applyEdits } from '../../server/src/text/span.ts'
import { recordsIn } from './any-record.ts'
import { today } from './checked.ts'

const at = 'samples/systems'
const panel = `${at}/panels/puffin-115.panel.yaml`
const tern = 'samples/library/panels/tern-110.panel.yaml'
const battery = `${at}/batteries/example-lfp-100.battery.yaml`
const controller = `${at}/controllers/example-mppt-30.controller.yaml`
const boat = `${at}/boat.system.yaml`

function findings(path: string, text: string): readonly Finding[] {
  const library = createLibrary()
  for (const folder of ['panels', 'batteries', 'climates', 'controllers'].map((name) => `${at}/${name}`))
    for (const one of recordsIn(folder)) library.put(`${folder}/${one.path}`, one.text)
  library.put(path, text)
  return checkFile(library, path, { today, years: 1 })!.findings.filter(({ severity }) => severity !== 'hint')
}

/** What a sample says after a part of it was typed in another way, beyond what it says as it is. */
function typed(path: string, from: string, to: string) {
  const right = readFileSync(path, 'utf8')
  const text = right.replace(from, to)
  expect(text).not.toBe(right)
  const known = new Set(findings(path, right).map(({ message }) => message))
  const beyond = (now: string) => findings(path, now).filter(({ message }) => !known.has(message))
  return { text, right, found: beyond(text), beyond }
}

test.each([
  // another name
  [panel, 'temperature_coefficients:\n  pmax:', 'temperature_coefficients:\n  gamma:'],
  [panel, '  voc: -65 mV/°C', '  beta: -65 mV/°C'],
  [panel, 'in_series: 36', 'cells in series: 36'],
  [panel, 'certificates:', 'certifications:'],
  [panel, 'datasheet:\n  source:', 'datasheet:\n  file:'],
  [controller, 'max_voltage: 100 V', 'max_pv_voltage: 100 V'],
  [controller, 'max_short_circuit_current: 35 A', 'isc: 35 A'],
  [controller, 'max_power: 440 W', 'max_pv_power: 440 W'],
  [controller, 'self_consumption: 20 mA', 'own_consumption: 20 mA'],
  [controller, 'output: { max_current: 30 A', 'output: { rated_current: 30 A'],
  [controller, 'type: mppt', 'type: MPPT'],
  [battery, 'nominal_voltage: 12.8 V', 'voltage: 12.8 V'],
  [battery, 'usable_depth: 80 %', 'DoD: 80 %'],
  [battery, 'lifepo4', 'LiFePO4'],
  [boat, 'wiring: { in_series: 2, in_parallel: 2 }', 'wiring: { series: 2, in_parallel: 2 }'],
  [boat, 'count: 4', 'qty: 4'],
  [boat, 'fuse: 100 A', 'breaker: 100 A'],
  [boat, 'name: fridge, power: 45 W', 'name: fridge, watts: 45 W'],
  [boat, 'autonomy: 2 days', 'autonomy_days: 2'],
  [boat, 'kind: boat', 'type: boat'],
  [panel, 'construction: flexible', 'type: flexible'],
  [boat, '- id: bimini\n    size', '- name: bimini\n    size'],
  // another word
  [panel, 'surface: ETFE', 'surface: ETFE film'],
  [boat, 'supply: ac', 'supply: inverter'],
  [boat, 'kind: boat', 'kind: yacht'],
  [boat, 'mounting: standoff', 'mounting: rails'],
  [boat, 'mounting: canvas', 'mounting: zip'],
  [boat, 'supply: dc', 'supply: 12 V'],
  [boat, 'supply: ac', 'supply: 230 V'],
  [boat, 'walked_on: false', 'walked_on: no'],
  // on one line
  [boat, 'wiring: { in_series: 2, in_parallel: 2 }', 'wiring: 2s2p'],
  [boat, 'months: [5, 6, 7, 8, 9]', 'months: May to September'],
  [boat, 'months: [5, 6, 7, 8, 9]', 'months: 5-9'],
  [controller, 'battery_voltages: [12 V, 24 V]', 'battery_voltages: 12/24 V'],
  [battery, 'capacity: { amount: 100 Ah, over: 20 h }', 'capacity: 100 Ah'],
  [battery, 'price: { amount: 520 USD, quoted_on: 2026-09-18, from: Example Chandlery }', 'price: 520 USD'],
  [panel, 'warranty:\n  output:\n    - years: 5', 'warranty:\n  output:\n    - years: 5 years'],
  [panel, 'in_series: 36', 'in_series: 36 cells'],
  [tern, 'mounting_frame: { weight: 1.4 kg }', 'mounting_frame: 1.4 kg'],
  // another way to give a number
  [battery, 'max_current: 50 A', 'max_current: C/2'],
  [battery, 'max_current: 50 A', 'max_current: 0.5 C'],
  [battery, 'energy: 1280 Wh', 'energy: 1,280 Wh'],
  [panel, 'length: 1050 mm', 'length: 1,050 mm'],
])('%s: %j typed as %j is read, with information and a fix that one step applies', (path, from, to) => {
  const { text, found, beyond } = typed(path, from, to)
  expect(found.map(({ severity }) => severity)).toEqual(['information'])
  const [fix] = found[0]!.corrections
  expect(fix?.certainty).toBe('same')
  expect(beyond(applyEdits(text, fix!.edits))).toEqual([])
})

test.each([
  [
    boat,
    'wiring: { in_series: 2, in_parallel: 2 }',
    'wiring: 2s2p',
    'wiring "2s2p" is read as { in_series: 2, in_parallel: 2 }.',
  ],
  [battery, 'max_current: 50 A', 'max_current: C/5', 'C/5 is 20 A: 0.2 times the capacity 100 Ah.'],
  [boat, 'power: 45 W', 'power: 5 A', '5 A is a current; a power belongs here (64 W at 12.8 V).'],
  [boat, 'power: 60 W', 'power: 5 A', '5 A is a current; a power belongs here, such as 110 W.'],
  [
    panel,
    'length: 1050 mm',
    'length: 1050 x 560 x 2.2 mm',
    'Give length, width and thickness a field each: 1050 mm, 560 mm, 2.2 mm.',
  ],
  [panel, 'years: 5', 'year: 5', 'output has no field year, so it is not read. Did you mean years?'],
  [
    boat,
    'size: 6 mm2',
    'size: #10',
    '#10 should be 10 AWG: the # begins a comment, so that YAML loses the rest of the line.',
  ],
  [
    tern,
    'pmax: 110 W',
    'pmax: 1,100 W',
    'Pmax 1,100 W is probably 110 W (digit doubled): 1,100 W cannot come from 1190 mm by 540 mm.',
  ],
  [
    tern,
    'length: 1190 mm, width: 540 mm',
    'length: 46.9, width: 21.3',
    'The length 46.9 is probably 46.9 in (no units, so read as mm): the weight 2.2 kg makes 2200 kg/m2; 1.6 to 4.8 is usual for a flexible panel.',
  ],
])('%s: %j typed as %j', (path, from, to, message) => {
  expect(typed(path, from, to).found.map((one) => one.message)).toContain(message)
})

test.each([
  ['length: 1050 mm', 'length: 1190 x 735 x 2.5 mm'],
  ['years: 2', 'years: 1 day'],
  ['in_series: 36', 'in_series: 36 V'],
  ['tolerance: ±3 %', 'tolerance: A/3'],
])('%j typed as %j has no fix that drops a number or makes one up', (from, to) => {
  const { found } = typed(panel, from, to)
  expect(found).not.toEqual([])
  expect(found.flatMap(({ corrections }) => corrections)).toEqual([])
})

// one cause, one finding: nothing is concluded from what is not known
test.each([
  ['    wiring: { in_series: 2, in_parallel: 2 }\n', ''],
  ['in_series: 2, in_parallel: 2', 'in_series: two, in_parallel: 2'],
  ['count: 4', 'count: four'],
  ['controller: example-mppt-30', 'controller: exmple-mppt-30'],
  ['panel: puffin-115', 'panel: pufin-115'],
  ['in_parallel: 3', 'in_parallel: three'],
  ['battery: example-lfp-100', 'battery: example-lfp-10'],
  ['fuse: 100 A', 'fuse: 100 V'],
  ['power: 45 W', 'power: 5 A'],
  ['hours: 12', 'hours: 12 W'],
  ['hours: 12', 'hours: 36'],
  ['size: { length: 2.3 m', 'size: { length: 2.3 kg'],
])('a boat with %j as %j has one finding', (from, to) => {
  const { found } = typed(boat, from, to)
  expect(found.map(({ severity, message }) => `${severity}: ${message}`)).toEqual([expect.stringMatching(/^error: /)])
})

test('what a fix leaves is said with the numbers that it leaves', () => {
  const right = readFileSync(panel, 'utf8')
  const text = right.replace('1050 mm', '46.9').replace('560 mm', '28.9')
  const printed = findings(panel, text).find(({ rule }) => rule === 'efficiency-printed')
  expect(printed?.message).toMatch(/disagrees with 13\.2 % from Pmax 115 W, 46\.9 in by 28\.9 in/)
})

test.each([
  [
    'size: { length',
    'size { length',
    'The colon after size is missing: write size: { length: 1190 mm, width: 540 mm, thi....',
  ],
  [
    'cells: { technology',
    'cells{ technology',
    'The colon after cells is missing: write cells: { technology: mono, in_series: 36, pa....',
  ],
  ['weight: 2.2 kg', 'weight 2.2 kg', 'The colon after weight is missing: write weight: 2.2 kg.'],
])('%j without its colon, %j, is one finding', (from, to, message) => {
  const { text, right, found } = typed(tern, from, to)
  expect(found.map((one) => one.message)).toEqual([message])
  expect(applyEdits(text, found[0]!.corrections[0]!.edits)).toBe(right)
})

test('a wire gauge with its number sign keeps the rest of its line', () => {
  const { text, found, beyond } = typed(boat, 'size: 6 mm2', 'size: #10')
  expect(found).toHaveLength(1)
  expect(beyond(applyEdits(text, found[0]!.corrections[0]!.edits))).toEqual([])
})
