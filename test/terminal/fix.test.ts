import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { spawnSync } from 'node:child_process'
import { expect, test } from 'vitest'
import { git, scratch, wattproof } from './run.ts'

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
