import { expect, test } from 'vitest'
import type { MarkupContent } from 'vscode-languageserver'
import { hover } from '../../server/src/editor/handlers/hover.ts'
import { tern } from './client.ts'
import { clients, hereAt } from './here.ts'

function check(fixture: string, said: readonly string[], client = clients.full) {
  const { here, offset } = hereAt(fixture, { client })
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
    '**efficiency 17.12 %** = Pmax / (1000 W/m2 x length x width)',
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

test('a doubt: why it matters and where that comes from', () => {
  check(tern.replace('22.1 V', '2.2$01 V'), [
    'Voc 2.21 V is below Vmp 18.6 V',
    'Source: definition of Voc and Vmp',
    '(voc-below-vmp)',
  ])
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
    ['Pmax, maximum power', 'efficiency 17.12 % = Pmax / (1000 W/m2 x length x width)'],
    clients.bare,
  )
  expect(value).not.toMatch(/\*\*|\\/)
})

test('text of a record cannot pass for markdown', () => {
  check(tern.replace('construction: flexible', 'construction: "<b>$0_x_"'), ['\\<b\\>\\_x\\_'])
})

test.each(['$0\n', 'format: 1\n\n$0', '# no$0te\nformat: 1\n'])('nothing to say: %j', (fixture) => {
  const { here, offset } = hereAt(fixture)
  const answer = hover({ ...here, checked: { ...here.checked, findings: [] } }, offset)
  expect(answer).toBeNull()
})
