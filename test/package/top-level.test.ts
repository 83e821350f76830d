import { execFileSync } from 'node:child_process'
import { expect, test } from 'vitest'

// a file that a shell made by mistake, or a folder of somebody's own, would be seen first by whoever opens the project
test('at the top level is what the guide names, and what tools look for there', () => {
  const paths = execFileSync('git', ['ls-files'], { encoding: 'utf8' }).trim().split('\n')
  const names = new Set(paths.map((path) => path.split('/')[0]!).filter((name) => !name.startsWith('.')))
  expect([...names].sort()).toEqual([
    'CHANGELOG.md',
    'DEVELOPERS.md',
    'LICENSE',
    'README.md',
    'THIRD-PARTY-NOTICES',
    'client',
    'package-lock.json',
    'package.json',
    'samples',
    'schemas',
    'server',
    'test',
    'tsconfig.json',
    'vitest.config.mts',
  ])
})
