import { expect, test } from 'vitest'
import { readFile } from '../../server/src/records/read.ts'
import { applyEdits } from '../../server/src/text/span.ts'

const panel = `format: 1
name: Tern 110
construction: flexible
cells: { technology: mono, in_series: 36 }
surface: ETFE
stc: { pmax: 110 W, vmp: 18.6 V, imp: 5.92 A, voc: 22.1 V, isc: 6.31 A, efficiency: 17.1 % }
temperature_coefficients: { pmax: -0.38 %/°C, voc: -0.29 %/°C, isc: 0.05 %/°C }
size: { length: 1190 mm, width: 540 mm, thickness: 3 mm }
weight: 2.2 kg
limits: { system_voltage: 600 V, series_fuse: 15 A }
`
const battery = `format: 1
name: Example
chemistry: lifepo4
nominal_voltage: 12.8 V
capacity: { amount: 100 Ah, over: 20 h }
charge: { max_current: 50 A }
`
const system = `format: 1
name: Example
kind: vehicle
site: { latitude: 43 deg }
surfaces: [{ id: roof, size: { length: 2 m, width: 1 m }, mounting: bonded }]
`

/** A record with another word in it: what is found, and whether it reads as before and is fixed into what it was. */
function typed(path: string, right: string, from: string, to: string) {
  const text = right.replace(from, to)
  expect(text).not.toBe(right)
  const [before, now] = [readFile(path, right)!, readFile(path, text)!]
  const values = (file: typeof now) => [...file.fields].map(([pointer, { value }]) => [pointer, value])
  expect(values(now).sort()).toEqual(values(before).sort())
  const edits = now.readFindings().flatMap(({ corrections }) => corrections[0]?.edits ?? [])
  return {
    found: now.readFindings().map(({ rule, severity, message }) => `${severity} ${rule}: ${message}`),
    fixed: applyEdits(text, edits),
  }
}

test.each([
  ['voc:', 'Voc:'],
  ['pmax: 110 W', 'Pmax: 110 W'],
  ['pmax: 110 W', 'max power: 110 W'],
  ['pmax: 110 W', 'Nennleistung: 110 W'],
  ['isc: 6.31 A', 'short circuit current: 6.31 A'],
  ['isc: 6.31 A', 'Kurzschlussstrom: 6.31 A'],
  ['voc: 22.1 V', 'tension circuit ouvert: 22.1 V'],
  ['efficiency:', 'eff:'],
  ['series_fuse:', 'max fuse:'],
  ['system_voltage:', 'Max. System Voltage:'],
  ['temperature_coefficients:', 'temp coeffs:'],
  ['thickness:', 'height:'],
  ['length: 1190 mm', 'height: 1190 mm'],
  ['size:', 'dimensions:'],
  ['weight:', 'Gewicht:'],
  ['weight: 2.2 kg', 'weight_kg: 2.2'],
  ['flexible', 'Flexible'],
  ['ETFE', 'etfe'],
  ['mono', 'monocrystalline'],
])('%s as %s is read, with information and a fix', (from, to) => {
  const { found, fixed } = typed('tern-110.panel.yaml', panel, from, to)
  expect(found).toHaveLength(1)
  expect(found[0]).toMatch(/^information other-word: .* is read as /)
  expect(fixed).toBe(to.startsWith('weight_kg') ? panel.replace('2.2 kg', '2.2') : panel)
})

/** How sheets in other languages print the rows of a panel, as the trade calls them. */
const labels: readonly (readonly [field: string, ...names: string[]])[] = [
  ['pmax: 110 W', 'Nennleistung', 'Puissance maximale', 'Potencia máxima', 'Potenza massima', 'Nominaal vermogen'],
  ['vmp:', 'MPP-Spannung', 'Tension à Pmax', 'Tensión a máxima potencia', 'Tensione a Pmax', 'MPP-spanning'],
  ['imp:', 'MPP-Strom', 'Courant à Pmax', 'Corriente a máxima potencia', 'Corrente a Pmax', 'MPP-stroom'],
  [
    'voc: 22.1',
    'Leerlaufspannung',
    'Tension de circuit ouvert',
    'Tensión de circuito abierto',
    'Tensione a circuito aperto',
    'Nullastspanning',
  ],
  [
    'isc: 6.31',
    'Kurzschlussstrom',
    'Courant de court-circuit',
    'Corriente de cortocircuito',
    'Corrente di cortocircuito',
    'Kortsluitstroom',
  ],
  ['efficiency:', 'Wirkungsgrad', 'Rendement', 'Eficiencia', 'Efficienza', 'Rendement'],
  ['weight:', 'Gewicht', 'Poids', 'Peso', 'Peso', 'Gewicht'],
  ['length: 1190', 'Länge', 'Longueur', 'Longitud', 'Lunghezza', 'Lengte'],
  ['width:', 'Breite', 'Largeur', 'Anchura', 'Larghezza', 'Breedte'],
]

test.each(
  labels.flatMap(([field, ...names]) =>
    names.map((name) => [field, field.replace(/^\w+/, name.includes(':') ? `"${name}"` : name)]),
  ),
)('%s under the label of a sheet in another language, %s', (from, to) => {
  const { found, fixed } = typed('tern-110.panel.yaml', panel, from, to)
  expect(found).toHaveLength(1)
  expect(found[0]).toMatch(/^information other-word: .* is read as /)
  expect(fixed).toBe(panel)
})

test.each([
  ['example.battery.yaml', battery, 'lifepo4', 'LiFePO4'],
  ['example.battery.yaml', battery, 'lifepo4', 'LFP'],
  ['example.system.yaml', system, 'kind: vehicle', 'kind: van'],
  ['example.system.yaml', system, 'mounting: bonded', 'mounting: glued'],
])('so in %s', (path, right, from, to) => {
  const { found, fixed } = typed(path, right, from, to)
  expect(found.filter((one) => one.includes('other-word'))).toHaveLength(1)
  expect(fixed).toBe(right)
})

test('the unit at the end of a name is that of its number', () => {
  const { fixed } = typed(
    'tern-110.panel.yaml',
    panel.replace('2.2 kg', '4.85 lb'),
    'weight: 4.85 lb',
    'weight_lb: 4.85',
  )
  expect(fixed).toContain('\nweight: 4.85 lb\n')
})

test('three sides on one line are three fields, by one fix', () => {
  const { found, fixed } = typed(
    'tern-110.panel.yaml',
    panel,
    '{ length: 1190 mm, width: 540 mm, thickness: 3 mm }',
    '1190 x 540 x 3 mm',
  )
  expect(found).toEqual([
    'information wrong-kind: Give length, width and thickness a field each: 1190 mm, 540 mm, 3 mm.',
  ])
  expect(fixed).toBe(panel)
})

test.each([
  '1190 mm (46.9 in)',
  '46.9 in (1190 mm)',
  '1190 mm / 46.85 in',
  '46 7/8 in, 1190 mm',
  '1,190 mm',
  '1,190 m',
])('a length of %s is read: both numbers agree, or the other reading is absurd', (length) => {
  const file = readFile('a.panel.yaml', panel.replace('length: 1190 mm', `length: "${length}"`))!
  expect(file.fields.get('/size/length')!.value).toBeCloseTo(1.19, 2)
  expect(file.readFindings().filter(({ severity }) => severity === 'error')).toEqual([])
})

test('two numbers that disagree are called so, with both to choose from', () => {
  const [one] = readFile('a.panel.yaml', panel.replace('2.2 kg', '2.2 kg (4.0 lb)'))!.readFindings()
  expect(one!.message).toBe('2.2 kg is 4.85 lb, and 4.0 lb is beside it; keep the one that is printed.')
  expect(one!.corrections.map(({ text }) => text)).toEqual(['2.2 kg', '4.0 lb'])
})

test('a misspelt word is no other word', () => {
  const rules = (text: string) =>
    readFile('a.panel.yaml', text)!
      .readFindings()
      .map(({ rule }) => rule)
  expect(rules(panel.replace('weight:', 'wieght:'))).toEqual(['unknown-field'])
  expect(rules(panel.replace('flexible', 'flexable'))).toEqual(['not-a-choice'])
})
