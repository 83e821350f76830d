import { expect, test } from 'vitest'
import type { InlayHint } from 'vscode-languageserver'
import { explainHint, inlayHints } from '../../server/src/editor/handlers/inlay-hints.ts'
import { marked } from '../markers.ts'
import { tern } from './client.ts'
import { hereAt } from './here.ts'

const both = { hints: { units: true, derived: true }, codeLens: true }

/** A blank parts what is shown from what is typed. */
function spoken(label: InlayHint['label']): string {
  expect(label).toMatch(/^ \S/)
  return (label as string).slice(1)
}

/** A mark says what stands behind its last character. */
function check(fixture: string, settings = both) {
  const { source, marks } = marked(fixture)
  const { here } = hereAt(source)
  const hints = inlayHints(here, { start: 0, end: source.length }, settings)
  const found = hints.map(({ position, label }) => `${position.line}:${position.character} ${spoken(label)}`)
  expect(found.sort()).toEqual(marks.map(({ line, to, text }) => `${line}:${to} ${text}`).sort())
  return { here, hints }
}

const lines = `format: 1
name: Tern 110
construction: flexible
stc:
  pmax: 110 W     # as printed
  #     ^^^^^ 17.1 %, hot 82.8 W
  isc: 6.31
  #    ^^^^ A
  #    ^^^^ design 7.89 A
size: { length: 1190, width: 540 mm }
#               ^^^^ mm
#                                   ^ 171 W/m2
weight: 2.2 kg
#       ^^^^^^ 50 W/kg
temperature_coefficients: { pmax: -0.38 %/°C }
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
  for (const { label } of hints) expect(spoken(label).length).toBeLessThanOrEqual(20)
})

test('a hint explains itself when it is looked at', () => {
  const { here, hints } = check(lines)
  const hint = hints.find(({ label }) => spoken(label) === '17.1 %, hot 82.8 W')!
  const { tooltip } = explainHint(here, hint)
  expect(tooltip).toContain('efficiency 17.1 % = Pmax / (1000 W/m2 x length x width)\nwith Pmax 110 W, length 1190')
  expect(tooltip).toContain('power on a hot day 82.8 W = Pmax x')
})

test('a value alone on its line is named', () => {
  check(
    'format: 1\nstc:\n  pmax: 110 W\n  #     ^^^^^ efficiency 17.1 %\nsize: { length: 1190 mm, width: 540 mm }\n#                                      ^ 171 W/m2\n',
  )
})

test('the unit of a list is said once, and none that is the name of the field', () => {
  const climate = 'format: 1\nlatitude: 43.5\nsun: [1.6, 2.5, 3.9]\n'
  const { here } = hereAt(climate, { name: 'bay.climate.yaml' })
  const shown = inlayHints(here, { start: 0, end: climate.length }, both).map(({ label }) => spoken(label))
  expect(shown).toEqual(['deg', 'kWh/m2'])
  const boat = 'format: 1\nloads: [{ name: lamp, power: 12, hours: 4 }]\n'
  const system = hereAt(boat, { name: 'boat.system.yaml' }).here
  expect(inlayHints(system, { start: 0, end: boat.length }, both).map(({ label }) => spoken(label))).toEqual(['W'])
})

test('a share below one is a fraction, and shows what that is in percent', () => {
  check('format: 1\nstc:\n  efficiency: 0.171\n  #           ^^^^^ = 17.1 %\n')
})

test('only what was asked for', () => {
  const { here, source } = hereAt(tern)
  expect(inlayHints(here, { start: 0, end: source.indexOf('stc') }, both)).toEqual([])
})
