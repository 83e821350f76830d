import { spawnSync } from 'node:child_process'
import { expect, test } from 'vitest'

test('the server that a person starts by hand says in one line how an editor starts it', () => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['dist/server.js'], { encoding: 'utf8' })
  expect(status).toBe(2)
  expect(stdout).toBe('')
  expect(stderr).toBe('wattproof: this is the language server, which an editor starts with --stdio.\n')
})
