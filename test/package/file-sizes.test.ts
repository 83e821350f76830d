import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

/** Code by hand: what is generated says so in its name. */
const code = execFileSync('git', ['ls-files', 'client', 'server', 'test', '.scripts'], { encoding: 'utf8' })
  .split('\n')
  .filter((path) => /\.(ts|mts|mjs|cjs)$/.test(path) && !path.includes('.generated.'))
  .map((path) => ({ path, lines: readFileSync(path, 'utf8').split('\n').length - 1 }))

test('no file of code has more than 250 lines', () => expect(code.filter(({ lines }) => lines > 250)).toEqual([]))

test('half of the files have no more than 60', () => {
  const sorted = code.map(({ lines }) => lines).sort((a, b) => a - b)
  expect(sorted[Math.floor(sorted.length / 2)]).toBeLessThanOrEqual(60)
})
