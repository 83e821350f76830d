import { spawnSync } from 'node:child_process'
import { expect, test } from 'vitest'

test('npm start shows a library in order, a panel, a system, one mistake with its fix, and ends well', () => {
  const { status, stdout } = spawnSync(process.execPath, ['.scripts/start.mjs'], { encoding: 'utf8' })
  expect(status).toBe(0)
  const order = ['0 errors', 'efficiency', 'cold', 'lasts without', 'fix: 22.1 V', 'Next:'].map((said) =>
    stdout.indexOf(said),
  )
  expect(order.every((at, i) => at > (order[i - 1] ?? 0))).toBe(true)
  expect(stdout.match(/: error /g)).toHaveLength(1)
  expect(stdout.split('\n').length).toBeLessThan(70)
})
