import { expect, test } from 'vitest'
import { good } from './records.ts'
import { git, put, scratch, wattproof } from './run.ts'

function changed(): string {
  const cwd = scratch({ 'panels/a.panel.yaml': good, 'panels/b.panel.yaml': good })
  git(cwd, 'init', '-q')
  git(cwd, 'add', '-A')
  git(cwd, 'commit', '-q', '-m', 'first')
  put(cwd, { 'panels/a.panel.yaml': good.replace('110 W', '100 W') })
  return cwd
}

test('what a change does to the derived values is a table, for a pull request too', () => {
  const cwd = changed()
  const text = wattproof(['values', '--since', 'HEAD'], { cwd })
  expect(text.code).toBe(0)
  expect(text.out).toContain('panels/a.panel.yaml')
  expect(text.out).not.toContain('panels/b.panel.yaml')
  expect(text.out).toMatch(/^efficiency +17\.1 % +15\.6 % +-9\.1 %$/m)
  expect(text.out).not.toMatch(/^area /m)
  const { out } = wattproof(['values', '--since', 'HEAD', '--format', 'markdown'], { cwd })
  expect(out).toContain('| value | before | now | change |')
  expect(out).toContain('| efficiency | 17.1 % | 15.6 % | -9.1 % |')
})

test('JSON has both sides as numbers', () => {
  const { files } = JSON.parse(wattproof(['values', '--since', 'HEAD', '--format', 'json'], { cwd: changed() }).out)
  expect(files).toHaveLength(1)
  const own = files[0].values.find(({ id }: { id: string }) => id === 'power_per_area')
  expect(own.now.value / own.before.value).toBeCloseTo(100 / 110, 9)
})

test('a new record has values only now', () => {
  const cwd = changed()
  git(cwd, 'commit', '-qam', 'second')
  put(cwd, { 'panels/c.panel.yaml': good })
  const { files } = JSON.parse(wattproof(['values', '--since', 'HEAD', '--format', 'json'], { cwd }).out)
  expect(files[0].path).toBe('panels/c.panel.yaml')
  expect(files[0].values[0].before).toEqual({ value: null, text: null })
})

test('nothing that differs is said, and a record or a revision must be named', () => {
  const cwd = changed()
  git(cwd, 'commit', '-qam', 'second')
  expect(wattproof(['values', '--since', 'HEAD'], { cwd })).toMatchObject({ out: '', code: 0 })
  expect(wattproof(['values'], { cwd }).code).toBe(2)
})
