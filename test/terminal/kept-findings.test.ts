import { appendFileSync, existsSync, readdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { scratch, wattproof } from './run.ts'

const bare = `format: 1
name: Dipper
construction: rigid
stc:
  pmax: 110 W
  vmp: 18.6 V
  imp: 5.92 A
  voc: 22.1 V
  isc: 6.31 A
size: { length: 1190 mm, width: 540 mm }
`

/** A folder with a record and a cache of its own. */
function kept() {
  const cwd = scratch({ 'a.panel.yaml': bare })
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
  writeFileSync(pack, before.replaceAll('No weight', 'NO WEIGHT'), 'latin1')
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
    'something else',
    (pack: string) => writeFileSync(pack, readFileSync(pack, 'latin1').replaceAll(/^(.{20}) .*/gm, '$1 [1]'), 'latin1'),
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
  // what cannot be used may stay until there is no room
  expect(readFileSync(pack!, 'latin1').split('\n')).toEqual(expect.arrayContaining(whole.split('\n')))
})

test('a text that is piped in is kept nowhere', () => {
  const cwd = scratch()
  const cache = scratch()
  const args = ['check', '-', '--stdin-filename', 'a.panel.yaml']
  expect(wattproof(args, { cwd, input: bare, env: { XDG_CACHE_HOME: cache } }).out).toContain('No weight')
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
})

test('what nobody asks for any more is removed after a month, what a stopped run left after a day', () => {
  const { check, packs } = kept()
  check()
  const [pack = ''] = packs()
  const aged = (name: string, days: number) => {
    const path = pack.replace(/\w+[.]txt$/, name)
    writeFileSync(path, '')
    const then = Date.now() / 1000 - days * 24 * 3600
    utimesSync(path, then, then)
    return path
  }
  const [old, young, stopped] = [aged('old.txt', 31), aged('young.txt', 29), aged('young.txt.1', 2)]
  check('--language', 'de') // adds to the pack
  expect([old, young, stopped].map((path) => existsSync(path))).toEqual([false, true, false])
})

test('a cache that cannot be written is no failure', () => {
  const { cwd } = kept()
  const cache = scratch({ wattproof: 'a file, no folder' })
  const run = wattproof(['check'], { cwd, env: { XDG_CACHE_HOME: cache } })
  expect([run.code, run.err, run.out]).toEqual([0, '', expect.stringContaining('No weight')])
})
