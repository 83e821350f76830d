import { expect, test } from 'vitest'
import { panel } from '../records/reported.ts'
import { check } from './checked.ts'

// one mistake is reported once: what stands there under another name, or elsewhere, is not missed besides
test.each([
  ['a misspelt name', 'wieght: 2.2 kg', 'weight-missing', 'unknown-field'],
  ['a misspelt group', 'limit: { bend: 30 deg, series_fuse: 15 A }', 'series-fuse-missing', 'unknown-field'],
  ['the wrong level', 'series_fuse: 15 A', 'series-fuse-missing', 'misplaced-field'],
])('%s', (_, line, missed, reported) => {
  const rules = (top: string) => check(panel({ top })).findings.map(({ rule }) => rule)
  expect(rules('')).toContain(missed)
  expect(rules(line)).not.toContain(missed)
  expect(rules(line)).toContain(reported)
})

test('a rating whose colon is missing is reported once', () => {
  const reported = check(panel({ top: '' }).replace('imp: ', 'imp ')).findings.filter(
    ({ severity }) => severity === 'error',
  )
  expect(reported).toMatchObject([{ rule: 'colon-missing', pointer: '/stc/imp' }])
})
