import { createHash } from 'node:crypto'
import {
  appendFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs'
import { dirname, join } from 'node:path'
import { expect, test } from 'vitest'
import { good } from './records.ts'
import { scratch, wattproof } from './run.ts'

/** A folder with a record and a cache of its own. */
function kept() {
  const cwd = scratch({ 'a.panel.yaml': good })
  const cache = scratch()
  const folder = join(cache, 'wattproof/findings')
  const check = (...more: string[]) => wattproof(['check', ...more], { cwd, env: { XDG_CACHE_HOME: cache } })
  const packs = () => (existsSync(folder) ? readdirSync(folder).map((name) => join(folder, name)) : [])
  return { cwd, check, packs }
}

/** What is kept is told apart from what is found again by a word that no program says. */
function reword(pack: string) {
  const before = readFileSync(pack, 'latin1')
  expect(before).toContain('No weight')
  const rehashed = (_: string, name: string, text: string) =>
    `${name} ${createHash('sha256').update(text).digest('hex').slice(0, 8)} ${text}`
  const after = before.replaceAll('No weight', 'NO WEIGHT').replaceAll(/^(\S{20}) \S{8} (.*)$/gm, rehashed)
  writeFileSync(pack, after, 'latin1')
}

test('what was found is kept for the next run, and shown in every format', () => {
  const { check, packs } = kept()
  const formats = ['text', 'json', 'sarif', 'github', 'junit']
  const first = formats.map((format) => check('--no-cache', '--format', format).out)
  expect(packs()).toEqual([])
  expect(check().out).toBe(first[0])
  expect(packs()).toHaveLength(1)
  expect(formats.map((format) => check('--format', format).out)).toEqual(first)
  reword(packs()[0]!)
  expect(check().out).toBe(first[0]!.replaceAll('No weight', 'NO WEIGHT'))
  expect(check('--no-cache').out).toBe(first[0])
})

test.each([
  ['cut', (pack: string) => writeFileSync(pack, readFileSync(pack, 'latin1').slice(0, -40), 'latin1')],
  ['garbled', (pack: string) => writeFileSync(pack, readFileSync(pack, 'latin1').replaceAll('{', '('), 'latin1')],
  [
    'wrong in one letter',
    (pack: string) => writeFileSync(pack, readFileSync(pack, 'latin1').replaceAll('No weight', 'No Weight'), 'latin1'),
  ],
  [
    'a folder',
    (pack: string) => {
      rmSync(pack)
      mkdirSync(pack)
    },
  ],
  ['of another program', (pack: string) => writeFileSync(pack, `0${readFileSync(pack, 'latin1')}`, 'latin1')],
  ['empty', (pack: string) => writeFileSync(pack, '')],
])('a cache that is %s is made anew', (_, spoil) => {
  const { check, packs } = kept()
  const first = check().out
  const [pack] = packs()
  const whole = readFileSync(pack!, 'latin1')
  spoil(pack!)
  expect(check().out).toBe(first)
  if (statSync(pack!).isDirectory()) return expect(packs()).toEqual([pack])
  // what cannot be used may stay until there is no room
  expect(readFileSync(pack!, 'latin1').split('\n')).toEqual(expect.arrayContaining(whole.split('\n')))
})

test('a text that is piped in is kept nowhere', () => {
  const cwd = scratch()
  const cache = scratch()
  const args = ['check', '-', '--stdin-filename', 'a.panel.yaml']
  expect(wattproof(args, { cwd, input: good, env: { XDG_CACHE_HOME: cache } }).out).toContain('No weight')
  expect(readdirSync(cache)).toEqual([])
})

test('a sheet that comes to lie beside the record is looked at', () => {
  const { cwd, check } = kept()
  appendFileSync(join(cwd, 'a.panel.yaml'), 'datasheet: { source: tern-110.pdf, page: 2 }\n')
  expect(check().out).toContain('is not there')
  expect(check().out).toContain('is not there')
  writeFileSync(join(cwd, 'tern-110.pdf'), readFileSync('samples/library/sheets/tern-110.pdf'))
  const found = check('--no-cache').out
  expect(found).not.toContain('is not there')
  expect([check().out, check().out]).toEqual([found, found])
  writeFileSync(join(cwd, 'tern-110.pdf'), readFileSync('samples/library/sheets/heron-100.pdf'))
  const other = check('--no-cache').out
  expect(other).not.toBe(found)
  expect([check().out, check().out]).toEqual([other, other])
})

test('what nobody asks for any more is removed after a month, what a stopped run left after a day', () => {
  const { check, packs } = kept()
  check()
  const [pack = ''] = packs()
  const aged = (name: string, days: number) => {
    const path = join(dirname(pack), name)
    writeFileSync(path, '')
    const then = Date.now() / 1000 - days * 24 * 3600
    utimesSync(path, then, then)
    return path
  }
  const [one, other] = ['0'.repeat(32), '1'.repeat(32)]
  const gone = [aged(`${one}.txt`, 31), aged(`${one}.txt.0123456789ab`, 2)]
  const left = [aged(`${other}.txt`, 29), aged(`${other}.txt.0123456789ab`, 0.5), aged('thesis.txt', 99)]
  check('--language', 'de') // adds to the pack
  expect([...gone, ...left].map((path) => existsSync(path))).toEqual([false, false, true, true, true])
})

test('a user without a home has no cache', () => {
  const { cwd } = kept()
  const home = join(
    scratch({ 'no-home.cjs': `require('node:os').homedir = () => { throw new Error('none') }` }),
    'no-home.cjs',
  )
  const run = wattproof(['check'], {
    cwd,
    env: { XDG_CACHE_HOME: '', LOCALAPPDATA: '', NODE_OPTIONS: `--require ${home}` },
  })
  expect([run.code, run.err, run.out]).toEqual([0, '', expect.stringContaining('No weight')])
})

test('a cache that cannot be written is no failure', () => {
  const { cwd } = kept()
  const cache = scratch({ wattproof: 'a file, no folder' })
  const run = wattproof(['check'], { cwd, env: { XDG_CACHE_HOME: cache } })
  expect([run.code, run.err, run.out]).toEqual([0, '', expect.stringContaining('No weight')])
})
