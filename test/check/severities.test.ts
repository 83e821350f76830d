import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { inOrder } from '../../server/src/check/order.ts'
import type { Finding, Severity } from '../../server/src/findings/finding.ts'
import { check } from './checked.ts'

const tern = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8').replace('17.1 % # as printed', '14 %')
const with_ = (severity: string) =>
  check(tern, { settings: `format: 1\nseverities: { efficiency-printed: ${severity} }\n` }).findings.map(
    (f) => f.severity,
  )

test.each(['error', 'warning', 'information', 'hint'])('a library makes a rule %s', (severity) => {
  expect(with_(severity)).toEqual([severity])
})

test('or silences it', () => expect(with_('off')).toEqual([]))

test('a word that is no severity changes nothing and is reported', () => {
  expect(with_('loud')).toEqual(['warning'])
  const settings = check('format: 1\nseverities: { efficiency-printed: loud }\n', { path: 'wattproof.yaml' })
  expect(settings.findings.map(({ rule, pointer }) => `${rule} ${pointer}`)).toEqual([
    'not-a-choice /severities/efficiency-printed',
  ])
})

test('settings for a rule that is not there are reported, with the nearest', () => {
  const { findings } = check('format: 1\nseverities: { efficiency-print: off }\n', { path: 'wattproof.yaml' })
  expect(findings.map(({ rule, message }) => `${rule}: ${message}`)).toEqual([
    'unknown-rule: No rule is called efficiency-print. Did you mean efficiency-printed?',
  ])
})

test('findings stand in file order, the most severe first, and every run is the same', () => {
  const text = tern.replace('voc: 22.1 V', 'voc: 2.21 V').replace('weight: 2.2 kg', 'weight: 22 kg\nfoo: 1')
  const runs = [1, 2, 3].map(() => check(text).findings.map(({ rule, span, message }) => [span.start, rule, message]))
  expect(runs[1]).toEqual(runs[0])
  expect(runs[2]).toEqual(runs[0])
  const starts = runs[0]!.map(([start]) => Number(start))
  expect(starts).toEqual([...starts].sort((a, b) => a - b))
  expect(starts.length).toBeGreaterThan(2)
})

test.each([
  ['rigid', 'warning'],
  ['flexible', 'information'],
])('a NOCT below that of any framed panel is, of a %s one, a matter of %s', (construction, severity) => {
  const text = tern.replace('construction: flexible', `construction: ${construction}`).replace('46 °C', '36 °C')
  const found = check(text).findings.filter(({ rule }) => rule === 'noct-unusual')
  expect(found.map((finding) => finding.severity)).toEqual([severity])
})

test('at one place findings stand by severity, information before hint', () => {
  const at = (severity: Severity): Finding => ({ ...check(tern).findings[0]!, severity, span: { start: 1, end: 2 } })
  const found = (['hint', 'warning', 'information', 'error'] as const).map(at)
  expect(inOrder(found).map(({ severity }) => severity)).toEqual(['error', 'warning', 'information', 'hint'])
})
