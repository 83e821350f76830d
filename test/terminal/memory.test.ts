import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { program, scratch } from './run.ts'

test('a thousand records are checked in little memory, each with its findings', () => {
  const typed = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8').replace(/\ndatasheet: .*/, '')
  const names = Array.from({ length: 1000 }, (_, i) => `tern-${i}.panel.yaml`)
  const cwd = scratch(Object.fromEntries(names.map((name, i) => [name, typed.replace(/name: .*/, `name: Tern ${i}`)])))
  // all of them as they are read take 42 MB
  const limits = ['--max-old-space-size=40', '--max-semi-space-size=2']
  const run = spawnSync(process.execPath, [...limits, program, 'check', '--jobs', '1', '--format', 'json'], {
    cwd,
    encoding: 'utf8',
    maxBuffer: 1 << 26,
  })
  expect(run.stderr).toBe('')
  expect(JSON.parse(run.stdout)).toMatchObject({ summary: { files: 1000, hint: 1000 } })
})
