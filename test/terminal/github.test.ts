import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { bad, doubtful } from './records.ts'
import { scratch, wattproof } from './run.ts'

const many = (n: number, text: string) =>
  Object.fromEntries(Array.from({ length: n }, (_, i) => [`p${i}.panel.yaml`, text]))

test('an annotation names file, place and rule, and the log has the whole list', () => {
  const { out } = wattproof(['check', '--format', 'github'], { cwd: scratch({ 'a,b/c:d.panel.yaml': bad }) })
  expect(out).toMatch(/^::error file=a%2Cb\/c%3Ad\.panel\.yaml,line=3,col=\d+,endLine=3,endColumn=\d+,title=[a-z-]+::/m)
  expect(out).toMatch(/^a,b\/c:d\.panel\.yaml:3:\d+: error /m)
})

test('line ends and per cent signs of a message are escaped', () => {
  const { out } = wattproof(['check', '--format', 'github', 'samples/mistakes'])
  const commands = out.split('\n').filter((line) => line.startsWith('::'))
  expect(commands.length).toBeGreaterThan(10)
  for (const line of commands) expect(line).not.toMatch(/%(?!25|0A|0D|3A|2C)/)
})

test('no more than ten of a level, the most severe first, and a word on the rest', () => {
  const { out } = wattproof(['check', '--format', 'github'], {
    cwd: scratch({ ...many(14, bad), 'x.panel.yaml': doubtful }),
  })
  const levels = out.split('\n').flatMap((line) => /^::(\w+)/.exec(line)?.[1] ?? [])
  expect(levels.filter((level) => level === 'error')).toHaveLength(10)
  expect(levels[0]).toBe('error')
  expect(out).toMatch(/^::notice title=wattproof::\d+ more of severity error/m)
})

test('the page of the run gets a table', () => {
  const cwd = scratch({ 'a.panel.yaml': bad })
  wattproof(['check', '--format', 'github'], { cwd, env: { GITHUB_STEP_SUMMARY: join(cwd, 'summary.md') } })
  expect(readFileSync(join(cwd, 'summary.md'), 'utf8')).toMatch(
    /^\| error \| a\.panel\.yaml:3 \| [a-z-]+ \| .*2\.21 V/m,
  )
})
