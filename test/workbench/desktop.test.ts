import { spawnSync } from 'node:child_process'
import { expect, test } from 'vitest'

test('without an editor to run in, the desktop leg fails and says what it wants', () => {
  const { status, stderr } = spawnSync(process.execPath, ['test/workbench/desktop.mjs'], {
    encoding: 'utf8',
    env: { ...process.env, VSCODE_EXECUTABLE: '/nowhere/code' },
  })
  expect(status).toBe(1)
  expect(stderr).toMatch(/^VSCODE_EXECUTABLE names \/nowhere\/code, and no program is there\. .*\n$/)
})
