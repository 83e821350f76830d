import { spawnSync } from 'node:child_process'
import { cpSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { createProgress } from '../../server/src/terminal/progress.ts'
import { program, put, scratch, wattproof } from './run.ts'

/** What is written when these many milliseconds have passed at each step. */
function written(...steps: readonly (readonly [at: number, done: number, total: number])[]): readonly string[] {
  const texts: string[] = []
  let time = 0
  const progress = createProgress(
    (text) => texts.push(text),
    () => time,
  )
  for (const [at, done, total] of steps) {
    time = at
    progress.show('checked', done, total)
  }
  return texts
}

test.each([
  [
    'nothing in the first second',
    [
      [0, 1, 9],
      [990, 8, 9],
      [999, 9, 9],
    ],
    [],
  ],
  [
    'then a line that is written over and cleared at the end',
    [
      [1000, 1, 9],
      [1100, 4, 9],
      [1200, 9, 9],
    ],
    ['\r\x1b[Kwattproof: checked 1 of 9 records', '\r\x1b[Kwattproof: checked 4 of 9 records', '\r\x1b[K'],
  ],
  [
    'no faster than anybody reads',
    [
      [1000, 1, 9],
      [1050, 2, 9],
      [1099, 3, 9],
      [1100, 4, 9],
    ],
    ['\r\x1b[Kwattproof: checked 1 of 9 records', '\r\x1b[Kwattproof: checked 4 of 9 records'],
  ],
] as const)('%s', (_, steps, texts) => expect(written(...steps)).toEqual(texts))

test.skipIf(process.platform !== 'linux').each(['1', '2'])(
  'a long run with %s threads says on a terminal how far it is',
  (jobs) => {
    const cwd = scratch()
    cpSync('samples/systems', cwd, { recursive: true })
    const text = readFileSync('samples/systems/boat.system.yaml', 'utf8')
    const { count, run } = longEnough((count) => {
      put(cwd, Object.fromEntries(Array.from({ length: count }, (_, i) => [`copies/boat-${i}.system.yaml`, text])))
      const command = `${process.execPath} ${program} check --quiet --jobs ${jobs} copies`
      return spawnSync('script', ['-qec', command, '/dev/null'], { cwd, encoding: 'utf8' })
    })
    const lines = run.stdout.matchAll(new RegExp(`wattproof: checked (\\d+) of ${count} records`, 'g'))
    const shown = [...lines].map(([, done]) => Number(done))
    expect(shown.length).toBeGreaterThan(1)
    expect(shown).toEqual([...shown].sort((a, b) => a - b))
    expect(run.stdout.trimEnd().split('\r').at(-1)).not.toContain('records')
    // without a terminal there is no line
    const plain = wattproof(['check', '--quiet', '--jobs', jobs, 'copies'], { cwd })
    expect(plain.err).toBe('')
  },
)

/** As many systems as take well over the first second, however fast the machine is. */
function longEnough<T>(check: (count: number) => T, count = 40): { readonly count: number; readonly run: T } {
  const began = performance.now()
  const run = check(count)
  return performance.now() - began > 2000 ? { count, run } : longEnough(check, 2 * count)
}
