import { chmodSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { spawnSync } from 'node:child_process'
import { expect, test } from 'vitest'
import type { Work } from '../../server/src/terminal/check-all.ts'
import { fixedIn } from '../../server/src/terminal/fixed-in.ts'
import type { World } from '../../server/src/terminal/world.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { git, program, scratch, wattproof } from './run.ts'

/** A decimal comma means what a point does; Voc below Vmp is for a person. */
const commas = `format: 1
name: Dipper
stc:
  pmax: 110 W
  vmp: 18,6 V
  imp: 5.92 A
  voc: 2.21 V # as printed
  isc: 6.31 A
size: { length: 1190 mm, width: 540 mm }
`

test('fixes that keep the meaning are written, the others are left to a person', () => {
  const cwd = scratch({ 'a.panel.yaml': commas })
  const run = wattproof(['check', '--fix'], { cwd })
  expect(run.err).toContain('fixed 1 finding in 1 record')
  expect(readFileSync(join(cwd, 'a.panel.yaml'), 'utf8')).toBe(commas.replace('18,6 V', '18.6 V'))
  expect(run.code).toBe(1)
  expect(run.out).toContain('2.21 V')
  expect(run.out).not.toContain('18,6')
})

test('a patch shows the same and writes nothing; git applies it', () => {
  const cwd = scratch({ 'panels/a.panel.yaml': commas })
  const run = wattproof(['check', '--diff'], { cwd })
  expect(run.code).toBe(1)
  expect(run.out).toMatch(/^--- a\/panels\/a\.panel\.yaml/)
  expect(run.out).toMatch(/^-.*18,6 V.*\n\+.*18\.6 V/m)
  expect(readFileSync(join(cwd, 'panels/a.panel.yaml'), 'utf8')).toBe(commas)
  git(cwd, 'init', '-q')
  const applied = spawnSync('git', ['-C', cwd, 'apply', '-'], { input: run.out, encoding: 'utf8' })
  expect(applied.stderr).toBe('')
  expect(readFileSync(join(cwd, 'panels/a.panel.yaml'), 'utf8')).toBe(commas.replace('18,6 V', '18.6 V'))
  const again = wattproof(['check', '--diff'], { cwd })
  expect([again.code, again.out]).toEqual([0, ''])
})

test('line endings and the byte order mark stay', () => {
  const text = `\uFEFF${commas.replaceAll('\n', '\r\n')}`
  const cwd = scratch({ 'a.panel.yaml': text })
  wattproof(['check', '--fix'], { cwd })
  expect(readFileSync(join(cwd, 'a.panel.yaml'), 'utf8')).toBe(text.replace('18,6 V', '18.6 V'))
})

test('what is staged is not written to', () => {
  expect(wattproof(['check', '--fix', '--staged'], { cwd: scratch() }).code).toBe(2)
})

test.runIf(process.platform !== 'win32')(
  'a record that cannot be written is said, the others are fixed, and the run ends with 2',
  () => {
    const cwd = scratch({ 'a/shut.panel.yaml': commas, 'b/only-read.panel.yaml': commas, 'c/open.panel.yaml': commas })
    for (const path of ['', 'b', 'c', 'c/open.panel.yaml']) chmodSync(join(cwd, path), 0o777)
    chmodSync(join(cwd, 'a'), 0o555)
    chmodSync(join(cwd, 'b/only-read.panel.yaml'), 0o444)
    // the superuser may write everywhere, so another user does
    const other = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {}
    const run = spawnSync(process.execPath, [program, 'check', '--fix'], { cwd, encoding: 'utf8', ...other })
    chmodSync(join(cwd, 'a'), 0o755)
    expect(run.stderr.split('\n')).toEqual([
      'wattproof: a/shut.panel.yaml cannot be written: you have no permission to write there',
      'wattproof: b/only-read.panel.yaml cannot be written: you have no permission to write there',
      'wattproof: fixed 1 finding in 1 record',
      '',
    ])
    expect(run.status).toBe(2)
    // what stayed as it was is still found
    expect(run.stdout.match(/18,6 V/g)?.length).toBeGreaterThan(1)
    const now = ['a/shut', 'b/only-read', 'c/open'].map((name) => readFileSync(join(cwd, `${name}.panel.yaml`), 'utf8'))
    expect(now).toEqual([commas, commas, commas.replace('18,6 V', '18.6 V')])
  },
)

test.each([
  ['ENOENT', 'it does not exist'],
  ['EISDIR', 'it is a folder'],
  ['ENOSPC', 'the disk is full'],
])('what happened to a record between reading and writing: %s', async (code, why) => {
  const library = createLibrary()
  const paths = ['/a.panel.yaml', '/b.panel.yaml']
  for (const path of paths) library.put(path, commas)
  const err: string[] = []
  const rewritten: string[] = []
  const world = {
    cwd: '/',
    today: '2026-11-25',
    err: (text: string) => err.push(text),
    rewrite: (path: string) =>
      path === paths[0]
        ? Promise.reject(Object.assign(new Error(code), { code }))
        : (rewritten.push(path), Promise.resolve()),
  } as unknown as World
  const work = { library, targets: paths, sheets: { at: () => Promise.resolve(null) } } as unknown as Work
  expect(await fixedIn(world, work, {})).toEqual({ fixed: 1, unwritten: 1 })
  expect(err.join('')).toBe(
    `wattproof: a.panel.yaml cannot be written: ${why}\nwattproof: fixed 1 finding in 1 record\n`,
  )
  expect(rewritten).toEqual([paths[1]])
  expect(paths.map((path) => library.file(path)!.tree.text.includes('18,6'))).toEqual([true, false])
})
