import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { check } from './checked.ts'

const tern = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8')
const broken = (from: string, to: string, text = tern) => {
  const out = text.replace(from, to)
  if (out === text) throw new Error(`no ${from}`)
  return out
}
const printed = broken('efficiency: 17.1 % # as printed', 'efficiency: 19.4 %')
const reported = (text: string, path?: string) => check(text, path ? { path } : {}).findings.map(({ rule }) => rule)
const accepted = (text: string, path?: string) =>
  check(text, path ? { path } : {}).accepted.map(({ finding, because }) => `${finding.rule}: ${because}`)

test('without an acceptance it is reported', () => expect(reported(printed)).toEqual(['efficiency-printed']))

test.each([
  ['on the line', broken('19.4 %', '19.4 % # accept efficiency-printed: cell area', printed)],
  ['behind two signs', broken('19.4 %', '19.4 % ## accept efficiency-printed: cell area', printed)],
  ['behind other words', broken('19.4 %', '19.4 % # as printed; accept efficiency-printed: cell area', printed)],
  [
    'on the line of the group',
    broken('stc: #', 'stc: # accept efficiency-printed: cell area ; #', printed)
      .replace(' ; # 1000', ' 1000')
      .replace('cell area 1000 W/m2, AM1.5, 25 °C cell', 'cell area'),
  ],
  ['on a line of its own, for the file', `# accept efficiency-printed: cell area\n${printed}`],
  ['in the list', `${printed}accepted: [{ rule: efficiency-printed, field: /stc/efficiency, because: cell area }]\n`],
  [
    'in the list, for the group',
    `${printed}accepted: [{ rule: efficiency-printed, field: /stc, because: cell area }]\n`,
  ],
  [
    'in the list, in lines',
    `${printed}accepted:\n  - rule: efficiency-printed\n    field: /stc/efficiency\n    because: cell area\n`,
  ],
])('accepted %s', (_, text) => {
  expect(accepted(text)).toEqual(['efficiency-printed: cell area'])
  expect(reported(text)).toEqual([])
})

test('several in one comment', () => {
  const two = printed.replace(
    '19.4 %',
    '19.4 % # accept efficiency-printed: cell area ; accept efficiency-above-record: none',
  )
  expect(accepted(two)).toEqual(['efficiency-printed: cell area'])
  expect(reported(two)).toEqual(['acceptance-unused'])
})

test.each([
  ['no reason', '19.4 % # accept efficiency-printed', ['acceptance-without-reason', 'efficiency-printed']],
  ['an empty reason', '19.4 % # accept efficiency-printed:', ['acceptance-without-reason', 'efficiency-printed']],
  ['another rule', '19.4 % # accept voc-below-vmp: who knows', ['acceptance-unused', 'efficiency-printed']],
  ['a rule that is not there', '19.4 % # accept efficiency-print: who knows', ['efficiency-printed', 'unknown-rule']],
])('%s accepts nothing', (_, value, rules) => {
  expect(reported(printed.replace('19.4 %', value)).sort()).toEqual(rules)
})

test('an acceptance on another line accepts nothing here', () => {
  const text = printed.replace('isc: 6.31 A', 'isc: 6.31 A # accept efficiency-printed: wrong line')
  expect(reported(text).sort()).toEqual(['acceptance-unused', 'efficiency-printed'])
})

test('an acceptance that matches nothing is marked on its own words', () => {
  const text = tern.replace('isc: 6.31 A', 'isc: 6.31 A # accept isc-below-imp: old')
  const [unused] = check(text).findings
  expect(text.slice(unused!.span.start, unused!.span.end)).toBe('accept isc-below-imp: old')
  expect(unused).toMatchObject({ rule: 'acceptance-unused', pointer: '/stc/isc', severity: 'information' })
})

test('JSON says it in a list', () => {
  const json = JSON.parse(readFileSync('samples/library/panels/egret-390.panel.json', 'utf8')) as Record<
    string,
    unknown
  >
  const stc = { ...(json.stc as object), efficiency: '15 %' }
  const path = 'egret-390.panel.json'
  expect(reported(JSON.stringify({ ...json, stc }), path)).toContain('efficiency-printed')
  const list = [{ rule: 'efficiency-printed', field: '/stc/efficiency', because: 'cell area' }]
  const text = JSON.stringify({ ...json, stc, accepted: list }, null, 2)
  expect(accepted(text, path)).toEqual(['efficiency-printed: cell area'])
  expect(reported(text, path)).not.toContain('efficiency-printed')
})

test('what YAML does to a number cannot be hidden behind a wide acceptance', () => {
  const text = printed
    .replace('length: 1190 mm', 'length: 1190,5 mm')
    .replace('stc: #', 'stc: # accept decimal-comma-splits: no ;')
  expect(reported(text)).toContain('decimal-comma-splits')
})

test('a value that a person vouches for is no slip', () => {
  const typed = '27.1 % # accept efficiency-printed: of the cells'
  expect(reported(printed.replace('19.4 %', '27.1 %'))).toEqual(['efficiency-printed'])
  expect(reported(printed.replace('19.4 %', typed))).toEqual([])
  const hint = printed.replace('19.4 %', '27.1 % # accept weight-missing: no matter')
  expect(reported(hint).sort()).toEqual(['acceptance-unused', 'efficiency-printed'])
})

test('what is accepted does not speak for what is not', () => {
  const text = tern.replace('weight: 2.2 kg', 'weight: 52 kg # accept weight-per-area-unusual: with its crate')
  expect(accepted(text)).toContain('weight-per-area-unusual: with its crate')
  expect(reported(text)).toEqual(['power-per-weight-unusual'])
})

test('a rule that is not there is reported with the nearest', () => {
  const [one] = check(tern.replace('isc: 6.31 A', 'isc: 6.31 A # accept isc-below-inp: why')).findings
  expect(one!.message).toBe('No rule is called isc-below-inp. Did you mean isc-below-imp?')
})
