import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import type { MarkupContent } from 'vscode-languageserver'
import { completion } from '../../server/src/editor/handlers/completion.ts'
import { hover } from '../../server/src/editor/handlers/hover.ts'
import { explainHint, inlayHints } from '../../server/src/editor/handlers/inlay-hints.ts'
import { hereAt } from './here.ts'

const folder = 'samples/systems'
const sample = readFileSync(`${folder}/measured/day-sailer.system.yaml`, 'utf8')
const others = Object.fromEntries(
  ['panels/puffin-115.panel', 'controllers/example-mppt-30.controller', 'batteries/example-lfp-100.battery'].map(
    (name) => [`${name}.yaml`, readFileSync(`${folder}/${name}.yaml`, 'utf8')],
  ),
)
const options = { name: 'day-sailer.system.yaml', others }
const settings = { hints: { units: true, derived: true }, codeLens: true }

test('the expected value is shown right after each measured one, and the power left after the date', () => {
  const { here } = hereAt(sample, options)
  const hints = inlayHints(here, { start: 0, end: sample.length }, settings)
  const line = sample.split('\n').findIndex((text) => text.includes('voc: 33.4 V'))
  const own = hints
    .filter(({ position }) => position.line === line)
    .sort((a, b) => a.position.character - b.position.character)
  expect(own.map(({ label }) => label)).toEqual([' (44.6 V)', ' (5.35 A)', ' (36.2 V)', ' (5 A)'])
  const text = sample.split('\n')[line]!
  expect(own.map(({ position }) => text.slice(0, position.character).slice(-6).trim())).toEqual([
    '33.4 V',
    '5.25 A',
    '26.3 V',
    '4.86 A',
  ])
  expect(explainHint(here, own[0]!).tooltip).toContain('IEC 60891:2021, procedure 2')
  const dates = hints.filter(({ label }) => /left$/.test(label as string)).map(({ label }) => label)
  expect(dates).toEqual([' 98 % left', ' 96 % left', ' 95 % left'])
  expect(
    inlayHints(here, { start: 0, end: sample.length }, { ...settings, hints: { units: true, derived: false } }),
  ).toEqual([])
})

test('a hover says what is expected, from what, how uncertain that is, and why it is a finding', () => {
  const { here, offset } = hereAt(sample.replace('voc: 33.4 V', 'voc: 33$0.4 V'), options)
  const { value } = hover(here, offset)!.contents as MarkupContent
  for (const said of [
    '**Voc**, open-circuit voltage',
    '**expected Voc 44.6 V**',
    'G 880 W/m2, T 56.9 °C from the air',
    'Uncertainty: 2.6 %; measured -25 %',
    '**measurement-below-expected**',
  ])
    expect(value).toContain(said)
})

test('arrays, dates, reference panels and fields are completed', () => {
  const at = (from: string, to: string) => {
    const { here, offset } = hereAt(sample.replace(from, to), options)
    return completion(here, offset).map(({ label }) => label)
  }
  const third = '  - date: 2026-06-20\n    array: coachroof'
  expect(at(third, '  - date: 2026-06-20\n    array: $0')).toEqual(['coachroof'])
  expect(at(third, '  - date: $0\n    array: coachroof')).toEqual(['2026-11-25'])
  expect(at('{ panel: puffin-115, isc: 5.11 A }', '{ panel: $0, isc: 5.11 A }')).toEqual(['puffin-115'])
  expect(at('    air: 25 °C # the cells are estimated from it\n', '    $0\n')).toContain('cell_temperature')
  expect(at('isc: 5.25 A', 'isc: 5.25 $0')).toContain('A')
})
