import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import type { MarkupContent } from 'vscode-languageserver'
import { hover } from '../../server/src/editor/handlers/hover.ts'
import { tern } from './client.ts'
import { recordsIn } from '../check/any-record.ts'
import { clients, hereAt } from './here.ts'

function check(fixture: string, said: readonly string[], options: Parameters<typeof hereAt>[1] = {}) {
  const { here, offset } = hereAt(fixture, options)
  const answer = hover(here, offset)
  const { value } = answer?.contents as MarkupContent
  for (const text of said) expect(value).toContain(text)
  return { value, range: answer!.range! }
}

test('a value: what it is, in other units, what follows from it with formula, inputs and source', () => {
  const { range } = check(tern.replace('110 W', '11$00 W'), [
    '**Pmax**, maximum power',
    '**Pmax**, maximum power: 110 W  \n',
    'Rated power at the maximum power point.',
    '**efficiency 17.1 %** = Pmax / (1000 W/m2 x length x width)',
    'with Pmax 110 W, length 1190 mm, width 540 mm',
    'Source: standard test conditions',
  ])
  expect(range).toEqual({ start: { line: 4, character: 8 }, end: { line: 4, character: 13 } })
})

test('a key says the same', () => {
  const { range } = check(tern.replace('pmax', 'pm$0ax'), ['**Pmax**, maximum power', '110 W'])
  expect(range).toEqual({ start: { line: 4, character: 2 }, end: { line: 4, character: 6 } })
})

test('inside braces', () => {
  check(tern.replace('1190 mm', '11$090 mm'), ['length', '46.85 in'])
})

test('the unit that stepped in is part of the value', () => {
  check(tern.replace('110 W', '11$00'), ['maximum power: 110 W'])
})

test('a choice: what the words mean', () => {
  check(tern.replace('flexible', 'flex$0ible'), ['- rigid: a framed or frameless glass panel'])
})

test('a doubt: why it matters and where that comes from; what is wrong stands beside it already', () => {
  const { value } = check(tern.replace('22.1 V', '2.2$01 V'), [
    '**voc-below-vmp**: A panel gives its highest voltage with nothing connected',
    'Source: definition of Voc and Vmp',
  ])
  expect(value).not.toContain('is below Vmp')
})

test('nothing that follows from a number which is probably another one is shown', () => {
  check(tern.replace('22.1 V', '22.$01 V'), ['fill factor **'])
  const { value } = check(tern.replace('22.1 V', '2.2$01 V'), ['**Voc**'])
  expect(value).not.toContain('fill factor')
  // what it has no part in stays
  check(tern.replace('110 W', '11$00 W').replace('22.1 V', '2.21 V'), ['efficiency'])
})

test.each(['library/panels', 'systems/panels', 'systems/batteries', 'systems/controllers', 'systems'])(
  'five lines at most, and the rest below "More": each field of %s',
  (folder) => {
    const others = Object.fromEntries(
      ['panels', 'batteries', 'climates', 'controllers'].flatMap((name) =>
        recordsIn(`samples/systems/${name}`).map(({ path, text }) => [`${name}/${path}`, text]),
      ),
    )
    for (const { path, text } of recordsIn(`samples/${folder}`)) {
      const { here } = hereAt(`$0${text}`, { name: path, others })
      const said = [...here.checked.fields.values()].flatMap(({ span }) => {
        const { value } = (hover(here, span.start)?.contents ?? { value: '' }) as MarkupContent
        return [value.split('**More**')[0]!.trim().split('\n')]
      })
      expect(said.length).toBeGreaterThan(10)
      expect(said.filter((lines) => lines.length > 5)).toEqual([])
      // half a hundred characters fit in a line, and three lines of text are read at a glance
      expect(said.flat().filter((line) => line.length > 170)).toEqual([])
    }
  },
)

test.each([
  ['1190 mm', '1190 mm = 46.85 in'],
  ['2.2 kg', '2.2 kg = 4.9 lb'],
  ['voc: -0.29 %/°C', '-0.29 %/°C = -64.1 mV/°C'],
  ['isc: 0.05 %/°C', '0.05 %/°C = 3.15 mA/°C'],
  ['temperature: 46 °C', '46 °C = 115 °F'],
])('%s is also said in the unit that others print', (typed, said) => {
  const text = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8')
  const at = text.indexOf(typed) + typed.length - 1
  check(`${text.slice(0, at)}$0${text.slice(at)}`, [said])
})

test('a cable in mm2 is also said in AWG, a voltage only as it is typed', () => {
  const text = readFileSync('samples/systems/boat.system.yaml', 'utf8')
  check(text.replace('size: 6 mm2', 'size: 6 m$0m2'), ['6 mm2 = 10 to 9 AWG'], { name: 'boat.system.yaml' })
  for (const none of ['0', '-1', '150'])
    expect(
      check(text.replace('size: 6 mm2', `size: ${none} m$0m2`), ['cable size'], { name: 'boat.system.yaml' }).value,
    ).not.toContain('AWG')
  check(text.replace('size: 6 mm2', 'size: 2/0 AW$0G'), ['2/0 AWG = 67'], { name: 'boat.system.yaml' })
  check(tern.replace('22.1 V', '22.1 $0V'), ['open-circuit voltage: 22.1 V  \n'])
})

test('what the symbols of the model mean is said in words', () => {
  const noct = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8').replace(
    'temperature: 46',
    'temperature: 4$06',
  )
  check(noct, ['X (what the mounting adds to NOCT) 18 K, bonded', 'k is by how much each W/m2 of sun warms the cells'])
})

test('short: twelve months in one line, and a source only where the value belongs', () => {
  const climate = readFileSync('samples/library/climates/example-bay.climate.yaml', 'utf8')
  const others = { 'wattproof.yaml': 'format: 1\nsite: { climate: bay }\n', 'bay.climate.yaml': climate }
  const sheet = `${tern}temperature_coefficients: { pmax: -0.38 %/°C, voc: -0.29 %/°C }\n`
  const { value } = check(sheet.replace('110 W', '1$010 W'), ['**energy of a day** January 154 Wh, February 247 Wh'], {
    others,
  })
  expect(value.split('energy of a day')).toHaveLength(2)
  expect(value.split('Source: standard test conditions')).toHaveLength(2)
  const { value: other } = check(sheet.replace('540 mm', '5$040 mm'), ['**efficiency 17.1 %** = Pmax'], { others })
  expect(other).not.toContain('Source: standard test conditions')
})

test('a value that cannot be known says what is missing', () => {
  check(tern.replace('width: 540 mm', '').replace('110 W', '$0110 W'), [
    'Not known yet:',
    '- efficiency: width missing',
  ])
})

test('plain text for a client that knows no markdown', () => {
  const { value } = check(
    tern.replace('110 W', '1$010 W'),
    ['Pmax, maximum power', 'efficiency 17.1 % = Pmax / (1000 W/m2 x length x width)'],
    { client: clients.bare },
  )
  expect(value).not.toMatch(/\*\*|\\/)
})

test('text of a record cannot pass for markdown', () => {
  const others = { 'auk.panel.yaml': tern.replace('Tern 110', '<b>_x_') }
  const boat = 'format: 1\narrays: [{ panels: [{ panel: au$0k }] }]\n'
  check(boat, ['\\<b\\>\\_x\\_'], { name: 'boat.system.yaml', others })
})

test.each(['$0\n', 'format: 1\n\n$0', '# no$0te\nformat: 1\n'])('nothing to say: %j', (fixture) => {
  const { here, offset } = hereAt(fixture)
  const answer = hover({ ...here, checked: { ...here.checked, findings: [] } }, offset)
  expect(answer).toBeNull()
})
