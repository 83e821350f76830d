import { spawnSync } from 'node:child_process'
import { cpSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { expect, test } from 'vitest'
import { scratch } from './run.ts'

/** A copy of the program as it lies in dist, or as a package has it. */
function copied(): string {
  const folder = join(scratch(), 'dist')
  for (const name of ['wattproof.js', 'terminal.js', 'terminal.compiled'])
    cpSync(resolve('dist', name), join(folder, name))
  return folder
}
const check = (folder: string) => {
  const record = 'samples/mistakes/decimal-point-moved.panel.yaml'
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(folder, 'wattproof.js'), 'check', record], {
    encoding: 'utf8',
  })
  return { status, stdout, stderr }
}

test.each<{ reason: string; spoil: (path: string) => void }>([
  { reason: 'made by another Node', spoil: (path) => writeFileSync(path, 'made by another Node') },
  { reason: 'cut short', spoil: (path) => writeFileSync(path, readFileSync(path).subarray(0, 50_000)) },
  { reason: 'not there, as in a package', spoil: (path) => rmSync(path) },
])('compiled code that is $reason changes nothing', ({ spoil }) => {
  const folder = copied()
  const whole = check(folder)
  expect(whole).toMatchObject({ status: 1, stderr: '' })
  spoil(join(folder, 'terminal.compiled'))
  expect(check(folder)).toEqual(whole)
})
