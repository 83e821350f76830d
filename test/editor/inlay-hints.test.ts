import { expect, test } from 'vitest'
import { explainHint, inlayHints } from '../../server/src/editor/handlers/inlay-hints.ts'
import { marked } from '../markers.ts'
import { tern } from './client.ts'
import { hereAt } from './here.ts'

const both = { hints: { units: true, derived: true }, codeLens: true }

/** A mark says what stands behind its last character. */
function check(fixture: string, settings = both) {
  const { source, marks } = marked(fixture)
  const { here } = hereAt(source)
  const hints = inlayHints(here, { start: 0, end: source.length }, settings)
  const found = hints.map(({ position, label }) => `${position.line}:${position.character} ${label as string}`)
  expect(found.sort()).toEqual(marks.map(({ line, to, text }) => `${line}:${to} ${text}`).sort())
  return { here, hints }
}

const lines = `format: 1
name: Tern 110
construction: flexible
stc:
  pmax: 110 W     # as printed
  #     ^^^^^ efficiency 17.12 %
  isc: 6.31
  #    ^^^^ A
  #    ^^^^ design 7.887 A
size: { length: 1190, width: 540 mm }
#               ^^^^ mm
#                                   ^ 171.2 W/m2
weight: 2.2 kg
#       ^^^^^^ 50 W/kg
temperature_coefficients: { pmax: -0.38 %/°C }
#                                            ^ hot 82.83 W
price: { amount: 289 USD }
#                        ^ 2.63 USD/W
`

test('units of bare numbers, and one value a line', () => {
  check(lines)
})

test('each kind can be switched off', () => {
  const marks = (keep: RegExp) =>
    lines
      .split('\n')
      .filter((line) => !line.includes('^') || keep.test(line))
      .join('\n')
  check(marks(/\^ (?:A|mm)$/), { hints: { units: true, derived: false }, codeLens: true })
  check(marks(/\^ (?!(?:A|mm)$)/), { hints: { units: false, derived: true }, codeLens: true })
  check(marks(/nothing/), { hints: { units: false, derived: false }, codeLens: true })
})

test('no hint is longer than a line has room for', () => {
  const { hints } = check(lines)
  for (const { label } of hints) expect((label as string).length).toBeLessThanOrEqual(20)
})

test('a hint explains itself when it is looked at', () => {
  const { here, hints } = check(lines)
  const hint = hints.find(({ label }) => label === 'efficiency 17.12 %')!
  expect(explainHint(here, hint).tooltip).toContain(
    '= Pmax / (1000 W/m2 x length x width)\nwith Pmax 110 W, length 1190',
  )
})

test('only what was asked for', () => {
  const { here, source } = hereAt(tern)
  expect(inlayHints(here, { start: 0, end: source.indexOf('stc') }, both)).toEqual([])
})
