import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { excerpt } from '../../server/src/terminal/formats/excerpt.ts'
import { bad } from './records.ts'
import { scratch, wattproof } from './run.ts'

test.each([
  { why: 'plain', line: 'voc: 2.21 V', marked: '2.21 V', column: 6, marker: '     ^^^^^^' },
  { why: 'a tab stays a tab', line: '\tvoc: 2.21 V', marked: '2.21 V', column: 7, marker: '\t     ^^^^^^' },
  {
    why: 'wide characters take two columns',
    line: '名前: 2.21 V',
    marked: '2.21 V',
    column: 5,
    marker: '      ^^^^^^',
  },
  { why: 'a character of two units is one', line: '𝄞: °C x', marked: '°C', column: 4, marker: '   ^^' },
  { why: 'a combining mark takes none', line: 'e\u0301: 1 V', marked: '1 V', column: 5, marker: '   ^^^' },
  { why: 'an empty stretch is still shown', line: 'voc:', marked: '', column: 1, marker: '^' },
])('marker: $why', ({ line, marked, column, marker }) => {
  const start = line.indexOf(marked)
  expect(excerpt(`${line}\r\nnext`, [0, line.length + 2], 0, { start, end: start + marked.length })).toEqual({
    line,
    column,
    marker,
  })
})

test('of a very long line only the surroundings are shown', () => {
  const text = `${'a'.repeat(5000)}: 2.21 V ${'b'.repeat(5000)}`
  const { line, marker, column } = excerpt(text, [0], 0, { start: 5002, end: 5008 })
  expect(line).toMatch(/^…a+: 2\.21 V b+…$/)
  expect(line.length).toBe(202)
  expect(line.slice(marker.indexOf('^'), marker.length)).toBe('2.21 V')
  expect(column).toBe(5003)
})

test('place, severity, rule and message stand in one line, the text and its marker below', () => {
  const { out } = wattproof(['check'], { cwd: scratch({ 'a.panel.yaml': bad }) })
  const lines = out.split('\n')
  const at = lines.findIndex((line) => line.startsWith('a.panel.yaml:3:') && line.includes('2.21 V'))
  expect(lines[at]).toMatch(/^a\.panel\.yaml:3:\d+: (error|warning) [a-z-]+: .+/)
  const [, column] = /:3:(\d+):/.exec(lines[at] as string) ?? []
  expect(lines[at + 1]).toBe(`  3 | ${bad.split('\n')[2]}`)
  expect(lines[at + 2]).toBe(`    | ${' '.repeat(Number(column) - 1)}^^^^^^`)
  expect(lines.at(-2)).toMatch(/^1 file, \d+ errors?\b/)
})

test('the fix is reported', () => {
  const { out } = wattproof(['check', 'samples/mistakes/comma-in-braces.panel.yaml'])
  expect(out).toMatch(/fix: 3\.10 A \(a decimal point\)/)
})

test.each([
  {
    of: 'a neighbour by its name',
    file: 'systems/hazards/four-in-series.system.yaml',
    fix: '2, and in_parallel: 2 (',
  },
  { of: 'one elsewhere by its path', file: 'mistakes', fix: ', and warranty.workmanship.years: ' },
])('a second field of the fix is reported: $of', ({ file, fix }) => {
  const { out } = wattproof(['check', `samples/${file}`])
  expect(out.split('\n').filter((line) => line.includes(' fix: ') && line.includes(fix))).not.toEqual([])
})

test('some further places are named in one line, those in other files from the current folder on', () => {
  const { out } = wattproof(['check', 'samples/mistakes/inches-typed-as-mm.panel.yaml'])
  const see = out.split('\n').filter((line) => line.includes(' see: '))
  expect(see).toEqual(['     see: Pmax 160 W (line 8), width 26 1/4 in (line 17), cells in series 36 (line 5)'])
  const system = wattproof(['check', 'samples/systems/hazards/current-above-controller.system.yaml']).out
  expect(system).toContain('60 A (samples/systems/controllers/example-mppt-60.controller.yaml)')
})

test('colour only where it is wanted', () => {
  const cwd = scratch({ 'a.panel.yaml': bad })
  const escapes = (env: Record<string, string>) => wattproof(['check'], { cwd, env }).out.includes('\u001b[')
  expect([escapes({}), escapes({ FORCE_COLOR: '1' }), escapes({ FORCE_COLOR: '1', NO_COLOR: '1' })]).toEqual([
    false,
    true,
    false,
  ])
})

test('with -o the file gets the format and the terminal the text', () => {
  const cwd = scratch({ 'a.panel.yaml': bad })
  const plain = wattproof(['check'], { cwd }).out
  expect(wattproof(['check', '--format', 'json', '-o', 'out.json'], { cwd }).out).toBe(plain)
  expect(JSON.parse(readFileSync(join(cwd, 'out.json'), 'utf8'))).toMatchObject({ version: 1 })
})
