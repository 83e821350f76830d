import { expect, test } from 'vitest'
import { causeOfVoltage } from '../../../server/src/review/measured/causes.ts'
import type { ResolvedPanels } from '../../../server/src/review/resolved.ts'
import { resolved } from '../resolved.ts'

const panel = (voc: string, diodes: number) =>
  `{ panel: { ${voc}, cells: { in_series: 36, bypass_diodes: ${diodes} } }, count: 1 }`
const string = (...panels: readonly string[]): readonly ResolvedPanels[] =>
  resolved(`arrays: [{ id: main, panels: [${panels.join(', ')}] }]\n`).arrays[0]!.panels
const alike = (count: number, diodes = 2) => string(...Array<string>(count).fill(panel('stc: { voc: 22 V }', diodes)))

// one of n panels takes 1/n of the voltage with it, a diode of d a d-th of that, and a panel turned round 2/n
test.each([
  [2, 2, 0.5, 'panel missing'],
  [2, 2, 0.25, 'bypass diode conducting'],
  [2, 2, 1, 'reversed'],
  [2, 2, 0.38, null],
  [2, 2, 0.12, null],
  [4, 3, 0.25, 'panel missing'],
  [4, 3, 1 / 12, 'bypass diode conducting'],
  [4, 3, 2 / 12, 'bypass diode conducting'],
  [4, 3, 0.5, 'reversed'],
  [1, 3, 1 / 3, 'bypass diode conducting'],
  [1, 3, 2 / 3, 'bypass diode conducting'],
  [1, 3, 1, null],
  [1, 1, 0.5, null],
  [3, 1, 1 / 3, 'panel missing'],
  [3, 1, 1 / 6, null],
])('of %i panels with %i diodes each, %f of Voc missing means: %s', (count, diodes, lost, cause) => {
  expect(causeOfVoltage(alike(count, diodes), lost, 0.01)).toBe(cause)
})

test('within 2 % of the share, or one and a half times what is uncertain', () => {
  const cause = (lost: number, uncertainty: number) => causeOfVoltage(alike(2), lost, uncertainty)
  expect(cause(0.519, 0)).toBe('panel missing')
  expect(cause(0.53, 0)).toBeNull()
  expect(cause(0.53, 0.021)).toBe('panel missing')
  expect(cause(0.55, 0.03)).toBeNull()
})

test('each panel counts by its own Voc', () => {
  const unlike = string(panel('stc: { voc: 30 V }', 1), panel('stc: { voc: 10 V }', 1))
  expect([0.25, 0.75, 0.5].map((lost) => causeOfVoltage(unlike, lost, 0.01))).toEqual([
    'panel missing',
    'panel missing',
    'reversed',
  ])
})

test('panels without Voc show nothing', () => {
  expect(causeOfVoltage(string(panel('weight: 2 kg', 2)), 0.5, 0.01)).toBeNull()
})
