import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import type { ReadFile } from '../../server/src/records/read-file.ts'

const values = { pmax: '-0.38', voc: '-0.29', isc: '0.05', noct: '46', cells: '36' }
const record = (changes: Partial<typeof values> = {}, named = '') => {
  const { pmax, voc, isc, noct, cells } = { ...values, ...changes }
  return `${named}cells: { technology: mono, in_series: ${cells} }
temperature_coefficients:
  pmax: ${pmax} %/°C
  voc: ${voc} %/°C # of the module
  isc: ${isc} %/°C
noct: { temperature: ${noct} °C }
`
}
const kinOf = (texts: Readonly<Record<string, string>>, path: string) => {
  const library = createLibrary()
  for (const [name, text] of Object.entries(texts)) library.put(name, text)
  return library.kinOf(library.file(path) as ReadFile<'panel'>)
}
const own = 'tern.panel.yaml'
const other = 'other.panel.yaml'

test.each([
  { reason: 'all alike', text: record(), is: true },
  { reason: 'one value apart', text: record({ noct: '56' }), is: true },
  { reason: 'one value missing', text: record().replace(/^noct.*\n/m, ''), is: true },
  { reason: 'two values apart', text: record({ noct: '56', cells: '32' }), is: false },
  { reason: 'the same in another writing', text: record({ pmax: '−0.380', isc: '0,05' }), is: true },
  { reason: 'too little said', text: 'noct: { temperature: 46 °C }\n', is: false },
  {
    reason: 'the same in JSON',
    text: JSON.stringify({
      cells: { in_series: 36 },
      temperature_coefficients: { pmax: '-0.38 %/°C', voc: '-0.29 %/°C', isc: '0.05 %/°C' },
      noct: { temperature: '46 °C' },
    }),
    is: true,
  },
])('$reason: may be of the family: $is', ({ text, is }) => {
  expect(kinOf({ [own]: record(), [other]: text }, own)).toEqual(is ? [other] : [])
})

test('a family that both name needs no likeness', () => {
  const named = 'maker: Petrel\nfamily: Tern\n'
  expect(kinOf({ [own]: `${named}weight: 2 kg\n`, [other]: `${named}noct: { temperature: 40 °C }\n` }, own)).toEqual([
    other,
  ])
})

test('a family that JSON of one line names is the same', () => {
  const text = JSON.stringify({ maker: 'Petrel', family: 'Tern', weight: '2 kg' })
  expect(kinOf({ [own]: 'maker: Petrel\nfamily: Tern\nweight: 2 kg\n', [other]: text }, own)).toEqual([other])
})

test('siblings in JSON of one line are heard against a NOCT that is unlike theirs', () => {
  const library = createLibrary()
  const typed = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8')
  library.put(own, typed.replace('temperature: 46 °C', 'temperature: 55 °C'))
  for (const power of [50, 200]) {
    const sibling = {
      family: 'Tern',
      cells: { technology: 'mono' },
      stc: { pmax: `${power} W` },
      noct: { temperature: '46 °C' },
    }
    library.put(
      `tern-${power}.panel.json`,
      JSON.stringify({ name: `Tern ${power}`, maker: 'Example Panel Works', ...sibling }),
    )
  }
  const { findings } = checkFile(library, own, { today: '2026-11-27' })!
  expect(findings.map(({ message }) => message)).toContainEqual(expect.stringContaining('Tern 200'))
})

test('the same coefficient in another unit is the same', () => {
  const text = record().replace('-0.38 %/°C', '-0.0038 1/K').replace('-0.29 %/°C', '-0.0029 /°C')
  expect(kinOf({ [own]: record(), [other]: text }, own)).toEqual([other])
})

test('the order in which records come does not matter, and a library of copies gives a few', () => {
  const names = Array.from({ length: 300 }, (_, i) => `p${1000 + i}.panel.yaml`)
  const texts = (list: readonly string[]) => Object.fromEntries(list.map((name) => [name, record()]))
  const found = kinOf(texts(names), 'p1150.panel.yaml')
  expect(kinOf(texts([...names].reverse()), 'p1150.panel.yaml')).toEqual(found)
  expect(found).toEqual([...names.slice(142, 150), ...names.slice(151, 159)])
})

test('a record that is gone or has changed is no kin any more', () => {
  const library = createLibrary()
  library.put(own, record())
  library.put(other, record())
  const kin = () => library.kinOf(library.file(own) as ReadFile<'panel'>).length
  expect(kin()).toBe(1)
  library.put(other, record({ noct: '40', cells: '60' }))
  expect(kin()).toBe(0)
  library.put(other, record())
  library.drop(other)
  expect(kin()).toBe(0)
})
