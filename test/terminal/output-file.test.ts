import { readFileSync, readdirSync, symlinkSync, existsSync } from 'node:fs'
import { join } from 'node:path'
import { spawnSync } from 'node:child_process'
import { expect, test } from 'vitest'
import { bad, good } from './records.ts'
import { program, scratch, wattproof } from './run.ts'

test.each(['a.panel.yaml', 'b.panel.yaml', 'wattproof.yaml', 'link.txt'])(
  '-o %s: a record is not overwritten',
  (name) => {
    const cwd = scratch({ 'a.panel.yaml': good })
    symlinkSync('a.panel.yaml', join(cwd, 'link.txt'))
    const run = wattproof(['check', '--format', 'json', '-o', name], { cwd })
    expect(run).toMatchObject({ code: 2, err: `wattproof: \`${name}\` is a record and stays as it is\n` })
    expect(readFileSync(join(cwd, 'a.panel.yaml'), 'utf8')).toBe(good)
  },
)

test('an older report is replaced as a whole, also through a link, and nothing else is left behind', () => {
  const cwd = scratch({ 'a.panel.yaml': bad, 'real.json': 'x'.repeat(99999) })
  symlinkSync('real.json', join(cwd, 'out.json'))
  expect(wattproof(['check', '--format', 'json', '-o', 'out.json'], { cwd }).code).toBe(1)
  expect(JSON.parse(readFileSync(join(cwd, 'real.json'), 'utf8'))).toMatchObject({ summary: { files: 1 } })
  expect(readdirSync(cwd).sort()).toEqual(['a.panel.yaml', 'out.json', 'real.json'])
})

test.each([
  ['/nowhere/x.json', 'its folder does not exist'],
  ['/dev/full', 'the disk is full'],
  ['folder', 'it is a folder'],
  ['a.panel.yaml/x.json', 'a part of its path is a file, not a folder'],
])('-o %s that cannot be written: one line, exit code 2', (name, why) => {
  const cwd = scratch({ 'a.panel.yaml': good, 'folder/notes.txt': '' })
  const run = wattproof(['check', '--format', 'json', '-o', name], { cwd })
  expect(run).toMatchObject({ code: 2, err: `wattproof: ${name} cannot be written: ${why}\n` })
})

test('a summary that cannot be written: one line, exit code 2', () => {
  const cwd = scratch({ 'a.panel.yaml': good })
  const run = wattproof(['check', '--format', 'github'], { cwd, env: { GITHUB_STEP_SUMMARY: '/dev/full' } })
  expect(run.code).toBe(2)
  expect(run.err).toBe('wattproof: the summary /dev/full cannot be written: the disk is full\n')
})

test.runIf(existsSync('/dev/full'))('a full disk behind standard output: one line, exit code 2', () => {
  const cwd = scratch({ 'a.panel.yaml': bad })
  const run = spawnSync('sh', ['-c', `"${process.execPath}" "${program}" check > /dev/full`], { cwd, encoding: 'utf8' })
  expect({ code: run.status, err: run.stderr }).toEqual({
    code: 2,
    err: 'wattproof: the output cannot be written: the disk is full\n',
  })
})
