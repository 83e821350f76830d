import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { scratch, wattproof } from './run.ts'

/** What a person does: take the `#` away, and type the example where nothing stands. */
const filled = (skeleton: string) =>
  skeleton
    .replace(/^#(?=\s*(?:- )?\w+:|\s+- )/gm, '')
    .replace(/^(\s*\w+:)\s*#.* Such as (.+)$/gm, '$1 $2')
    .replace(
      /^(\s*\w+:)\s*#.* (\w+) \| .*$/gm,
      (line, key, choice) => `${key} ${line.replace(/ \|.*/, '').split(' ').at(-1) ?? choice}`,
    )

// a climate wants twelve months and a system the records that it names, which no example can know
test.each(['panel', 'controller', 'battery', 'library'])(
  'a skeleton %s filled with its examples has no errors',
  (kind) => {
    const name = kind === 'library' ? 'wattproof.yaml' : `x.${kind}.yaml`
    const cwd = scratch()
    expect(wattproof(['new', kind, '-o', name], { cwd })).toMatchObject({ code: 0, out: '', err: '' })
    const skeleton = readFileSync(join(cwd, name), 'utf8')
    const run = wattproof(['check', '-', '--stdin-filename', name], { cwd: scratch(), input: filled(skeleton) })
    expect(run.out).not.toMatch(/: error /)
  },
)

test('a panel skeleton as it comes names only what has to be filled in', () => {
  const run = wattproof(['new', 'panel'])
  const { out } = wattproof(['check', '-', '--stdin-filename', 'x.panel.yaml', '--format', 'json'], {
    cwd: scratch(),
    input: run.out,
  })
  const { findings } = JSON.parse(out).files[0]
  const serious = findings.filter((f: { severity: string }) => f.severity === 'error' || f.severity === 'warning')
  expect(new Set(serious.map((f: { rule: string }) => f.rule))).toEqual(new Set(['missing-field']))
})

test('a file that is there stays as it is', () => {
  const cwd = scratch({ 'x.panel.yaml': 'mine' })
  expect(wattproof(['new', 'panel', '-o', 'x.panel.yaml'], { cwd }).code).toBe(2)
  expect(readFileSync(join(cwd, 'x.panel.yaml'), 'utf8')).toBe('mine')
})

test('a name that would not be read as that kind is refused', () => {
  const run = wattproof(['new', 'panel', '-o', 'x.yaml'], { cwd: scratch() })
  expect(run.code).toBe(2)
  expect(run.err).toContain('.panel.yaml')
})
