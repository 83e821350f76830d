import { expect, test } from 'vitest'
import { bad, good } from './records.ts'
import { scratch, wattproof } from './run.ts'

const files = {
  'panels/a.panel.yaml': good,
  'panels/old/b.panel.yaml': bad,
  'spare/c.panel.yaml': bad,
  'd.panel.yaml': good,
}

const checked = (cwd: string, ...args: string[]): string[] =>
  JSON.parse(wattproof(['check', '--format', 'json', ...args], { cwd }).out).files.map(
    (file: { path: string }) => file.path,
  )

test.each([
  { pattern: 'panels/*.yaml', matches: ['panels/a.panel.yaml'] },
  { pattern: 'panels/**/*.yaml', matches: ['panels/a.panel.yaml', 'panels/old/b.panel.yaml'] },
  { pattern: '*/c.panel.yaml', matches: ['spare/c.panel.yaml'] },
  { pattern: '{panels,spare}/*.panel.yaml', matches: ['panels/a.panel.yaml', 'spare/c.panel.yaml'] },
  { pattern: '?.panel.yaml', matches: ['d.panel.yaml'] },
])('$pattern', ({ pattern, matches }) => {
  expect(checked(scratch(files), pattern)).toEqual(matches)
})

test('a pattern that matches nothing is a mistake', () => {
  const run = wattproof(['check', 'pannels/*.yaml'], { cwd: scratch(files) })
  expect(run.code).toBe(2)
  expect(run.err).toContain('no record matches `pannels/*.yaml`')
})

test.each([
  { exclude: ['old'], left: ['d.panel.yaml', 'panels/a.panel.yaml', 'spare/c.panel.yaml'] },
  { exclude: ['spare/', 'panels/old'], left: ['d.panel.yaml', 'panels/a.panel.yaml'] },
  { exclude: ['*/**'], left: ['d.panel.yaml'] },
  { exclude: ['b.panel.yaml', 'c.*'], left: ['d.panel.yaml', 'panels/a.panel.yaml'] },
])('without $exclude', ({ exclude, left }) => {
  const args = exclude.flatMap((pattern) => ['--exclude', pattern])
  expect(checked(scratch(files), ...args)).toEqual(left)
})

test('quiet prints nothing and still says by its exit code what was found', () => {
  const cwd = scratch(files)
  const run = wattproof(['check', '--quiet', '--format', 'json', '-o', 'found.json'], { cwd })
  expect([run.out, run.err, run.code]).toEqual(['', '', 1])
  expect(wattproof(['check', '-q', 'd.panel.yaml'], { cwd }).code).toBe(0)
})

test('what is accepted is shown where that is asked for, with the reason', () => {
  const ratings =
    'pmax: 110 W\n  vmp: 18.6 V\n  imp: 5.92 A\n  voc: 2.21 V # accept voc-below-vmp: as printed\n  isc: 6.31 A\n'
  const record = `format: 1\nname: Dipper\nstc:\n  ${ratings}size: { length: 1190 mm, width: 540 mm }\n`
  const cwd = scratch({ 'a.panel.yaml': record })
  expect(wattproof(['check'], { cwd }).out).not.toContain('accepted voc-below-vmp')
  const { out } = wattproof(['check', '--show-accepted'], { cwd })
  expect(out).toMatch(/^a\.panel\.yaml:7:8: accepted voc-below-vmp: Voc 2\.21 V is below Vmp 18\.6 V/m)
  expect(out).toContain('  because: as printed\n')
  const [file] = JSON.parse(wattproof(['check', '--show-accepted', '--format', 'json'], { cwd }).out).files
  expect(file.accepted[0]).toMatchObject({ rule: 'voc-below-vmp', because: 'as printed' })
})
