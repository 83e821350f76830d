import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import type { MarkupContent } from 'vscode-languageserver'
import { hover } from '../../server/src/editor/handlers/hover.ts'
import { tern } from './client.ts'
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
    '110 W = 0.110 kW',
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
  check(tern.replace('110 W', '11$00'), ['110 W = 0.110 kW'])
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

test('short: twelve months in one line, and a source only where the value belongs', () => {
  const climate = readFileSync('samples/library/climates/example-bay.climate.yaml', 'utf8')
  const others = { 'wattproof.yaml': 'format: 1\nsite: { climate: bay }\n', 'bay.climate.yaml': climate }
  const sheet = `${tern}temperature_coefficients: { pmax: -0.38 %/°C, voc: -0.29 %/°C }\n`
  const { value } = check(
    sheet.replace('110 W', '1$010 W'),
    ['energy of a day from January to December** 154 Wh, 247 Wh'],
    {
      others,
    },
  )
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
