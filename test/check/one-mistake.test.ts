import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { recordsIn } from './any-record.ts'

const panel = (name: string, changes: Readonly<Record<string, string>> = {}) => {
  const {
    pmax = '110 W',
    noct = '46 °C',
    beta = '-0.29 %/°C',
    length = '1190 mm',
    weight = '2.2 kg',
    imp = '5.92 A',
    isc = '6.31 A',
  } = changes
  return `format: 1
name: ${name}
maker: Example Panel Works
family: Tern
construction: flexible
cells: { technology: mono, in_series: 36 }
stc: { pmax: ${pmax}, vmp: 18.6 V, imp: ${imp}, voc: 22.1 V, isc: ${isc} }
temperature_coefficients: { pmax: -0.38 %/°C, voc: ${beta}, isc: 0.05 %/°C }
noct: { temperature: ${noct} }
size: { length: ${length}, width: 540 mm }
weight: ${weight}
`
}
const small = panel('Tern 55', { pmax: '55 W', imp: '2.96 A', isc: '3.15 A', length: '620 mm', weight: '1.1 kg' })
const large = panel('Tern 220', { pmax: '220 W', imp: '11.83 A', isc: '12.6 A', length: '2320 mm', weight: '4.3 kg' })
const twin = panel('Tern 105', { pmax: '105 W', imp: '5.65 A', isc: '6.02 A' })

function found(text: string, others: readonly string[]) {
  const library = createLibrary()
  library.put('tern-110.panel.yaml', text)
  others.forEach((other, i) => library.put(`other-${i}.panel.yaml`, other))
  const { findings } = checkFile(library, 'tern-110.panel.yaml', { today: '2026-11-25' })!
  return findings.filter(({ severity }) => severity !== 'hint')
}

test('what is unusual about the fields of a warning is not reported besides', () => {
  expect(found(panel('Tern 110', { weight: '22 kg' }), [twin])).toMatchObject([{ rule: 'weight-per-area-unusual' }])
  expect(found(panel('Tern 110', { length: '119 mm' }), [])).toMatchObject([{ rule: 'efficiency-impossible' }])
})

test('of two findings of information on one field, the one with a fix is reported', () => {
  expect(found(panel('Tern 110', { noct: '65 °C' }), [small, large])).toMatchObject([{ rule: 'unlike-family' }])
})

test('a coefficient that its family has otherwise is reported once, with every sibling', () => {
  const [one, ...others] = found(panel('Tern 110', { beta: '-0.92 %/°C' }), [small, large])
  expect(others).toEqual([])
  expect(one!.severity).toBe('warning')
  expect(one!.corrections[0]).toMatchObject({ text: '-0.29 %/°C' })
  expect(one!.related.flatMap(({ path }) => path ?? [])).toEqual(['other-0.panel.yaml', 'other-1.panel.yaml'])
})

test('a rating that is a neighbour’s is reported as that', () => {
  const [one] = found(panel('Tern 110', { pmax: '105 W' }), [twin])
  expect(one!.message).toContain(', and 105 W is what Tern 105 has')
})

const boat = readFileSync('samples/systems/boat.system.yaml', 'utf8')
const puffin = readFileSync('samples/systems/panels/puffin-115.panel.yaml', 'utf8')

/** What is found of a sample beyond what is found of it unchanged. */
function beyond(path: string, text: string, from: string | RegExp, to: string) {
  const library = createLibrary()
  for (const folder of ['panels', 'batteries', 'climates', 'controllers'])
    for (const one of recordsIn(`samples/systems/${folder}`)) library.put(`${folder}/${one.path}`, one.text)
  const rules = (now: string) => {
    library.put(path, now)
    return checkFile(library, path, { today: '2026-11-25' })!.findings.filter(({ severity }) => severity !== 'hint')
  }
  const known = rules(text).map(({ message }) => message)
  const changed = text.replace(from, to)
  expect(changed).not.toBe(text)
  return rules(changed).filter(({ message }) => !known.includes(message))
}

test.each([
  [
    'a length twice wrong',
    'panels/puffin-115.panel.yaml',
    puffin,
    /1050 mm\n.*\n/,
    '10.50 m\n  width: 5.60 m\n',
    '1.050 m',
  ],
  [
    'sides in the wrong unit',
    'panels/puffin-115.panel.yaml',
    puffin,
    /1050 mm\n.*\n/,
    '41.3 mm\n  width: 22.0 mm\n',
    '41.3 in',
  ],
  ['an unknown surface', 'boat.system.yaml', boat, 'surface: bimini', 'surface: binimi', 'bimini'],
  ['a missing colon', 'panels/puffin-115.panel.yaml', puffin, 'voc: 24.5 V', 'voc 24.5 V', '24.5 V'],
  ['a misspelt limit', 'panels/puffin-115.panel.yaml', puffin, 'bend: 30', 'bnd: 30', 'bend'],
  ['misspelt limits', 'panels/puffin-115.panel.yaml', puffin, 'limits:', 'limts:', 'limits'],
  ['a space lost before a number', 'panels/puffin-115.panel.yaml', puffin, 'voc: 24.5 V', 'voc:24.5 V', '24.5 V'],
  ['an id with an open quote', 'boat.system.yaml', boat, '- id: bimini', '- id: "bimini', 'bimini'],
  ['a surface with an open quote', 'boat.system.yaml', boat, 'surface: bimini', 'surface: "bimini', 'bimini'],
  ['a surface without its dash', 'boat.system.yaml', boat, '  - id: coachroof', '    id: coachroof', '- id: coachroof'],
  [
    'a list begun twice',
    'boat.system.yaml',
    boat,
    'surfaces:',
    'surfaces:\nsurfaces:',
    '- id: bimini size: { length: 2.3 m, w...',
  ],
  [
    'two fields in a line',
    'boat.system.yaml',
    boat,
    '\n    mounting: canvas #',
    ' mounting: canvas #',
    'mounting: canvas # bonded | canvas | ...',
  ],
] as const)('%s is one finding with its fix', (_, path, text, from, to, fix) => {
  const [one, ...others] = beyond(path, text, from, to)
  expect(others).toEqual([])
  expect(one!.corrections[0]!.text).toBe(fix)
})

test('an id with a quote in it is not offered for one without', () => {
  const [one, ...others] = beyond('boat.system.yaml', boat, '- id: coachroof', '- id: coachroof"')
  expect(others).toEqual([])
  expect(one).toMatchObject({ rule: 'unknown-surface', corrections: [] })
})

test('a weight without the space before its number is not missed besides', () => {
  const library = createLibrary()
  library.put('p.panel.yaml', small.replace('weight: ', 'weight:'))
  const rules = checkFile(library, 'p.panel.yaml', { today: '2026-11-25' })!.findings.map(({ rule }) => rule)
  expect(rules).toContain('colon-without-space')
  expect(rules).not.toContain('weight-missing')
})

test('a system without wiring is not said to be wired wrongly, nor one without panels', () => {
  const rules = (from: RegExp, to: string) => beyond('boat.system.yaml', boat, from, to).map(({ rule }) => rule)
  expect(rules(/ {4}wiring: .*\n/, '')).not.toContain('wiring-count-mismatch')
  expect(rules(/panels: \[\{.*\n/, 'panels: []\n')).not.toContain('wiring-count-mismatch')
})
