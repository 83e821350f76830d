import { execFile } from 'node:child_process'
import { cpSync, mkdtempSync, readdirSync, rmSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { promisify } from 'node:util'
import { expect, onTestFinished, test } from 'vitest'

const run = promisify(execFile)

test('while the programs are built again, and by two at once, each can be started', async () => {
  const tree = mkdtempSync(join(tmpdir(), 'wattproof-builds-'))
  onTestFinished(() => rmSync(tree, { recursive: true }))
  for (const name of ['client', 'server', 'schemas', '.scripts', 'package.json', 'tsconfig.json'])
    cpSync(name, join(tree, name), { recursive: true })
  symlinkSync(resolve('node_modules'), join(tree, 'node_modules'))
  const node = (...args: string[]) => run(process.execPath, args, { cwd: tree })
  await node('.scripts/build.mjs')

  let isBuilding = true
  const builds = Promise.all([node('.scripts/build.mjs'), node('.scripts/build.mjs')]).finally(
    () => (isBuilding = false),
  )
  let starts = 0
  for (; isBuilding; starts++) expect((await node('dist/wattproof.js', '--version')).stdout).toMatch(/^\d+\.\d+\.\d+/)
  await builds
  expect(starts).toBeGreaterThan(0)
  expect(readdirSync(join(tree, 'dist')).sort()).toEqual(readdirSync('dist').sort())
})
