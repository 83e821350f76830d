import { cpSync, mkdirSync, readFileSync, readdirSync, renameSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { scratch, wattproof } from './run.ts'

/** Nothing kept of other runs. */
const fresh = () => ({ XDG_CACHE_HOME: scratch() })
const tern = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8')
const heavier = tern.replace('weight: 2.2 kg', 'weight: 2.6 kg').replace(/, sha256: \w+/, '')

/** A folder with a record and the sheets of the sample library. */
function folderWith(record: string, text: string, settings = false): string {
  const cwd = scratch({ [record]: text, ...(settings ? { 'wattproof.yaml': 'format: 1\n' } : {}) })
  cpSync('samples/library/sheets', join(cwd, 'sheets'), { recursive: true })
  return cwd
}

describe('a record finds its sheet', () => {
  test.each([
    ['below its own folder', 'a.panel.yaml', 'sheets/tern-110.pdf', false],
    ['beside the folder of records', 'panels/a.panel.yaml', '../sheets/tern-110.pdf', false],
    ['beside a folder of folders', 'records/clean/a.panel.yaml', '../../sheets/tern-110.pdf', false],
    ['by the root of the library', 'panels/deep/a.panel.yaml', 'sheets/tern-110.pdf', true],
  ])('%s', (_, record, source, settings) => {
    const cwd = folderWith(record, heavier.replace('sheets/tern-110.pdf', source), settings)
    const run = wattproof(['check', record, '--format', 'json'], { cwd, env: fresh() })
    expect(JSON.parse(run.out).files[0].findings).toMatchObject([{ rule: 'unlike-sheet', field: '/weight' }])
  })

  test('but not outside of the library, nor far above', () => {
    const record = heavier.replace('sheets/tern-110.pdf', '../../sheets/tern-110.pdf')
    const cwd = folderWith('library/panels/a.panel.yaml', record)
    writeFileSync(join(cwd, 'library/wattproof.yaml'), 'format: 1\n')
    const run = wattproof(['sheet', 'library/panels/a.panel.yaml'], { cwd, env: fresh() })
    expect([run.code, run.err]).toEqual([2, expect.stringContaining('is not there')])
    const far = folderWith('a/b/c/d.panel.yaml', heavier.replace('sheets/', '../../../sheets/'))
    expect(wattproof(['sheet', 'a/b/c/d.panel.yaml'], { cwd: far, env: fresh() }).code).toBe(2)
  })
})

test('sheet prints every field, its place, and what was not typed', () => {
  const record = heavier.replace(/^ {2}imp: .*\n/m, '')
  const cwd = folderWith('a.panel.yaml', record)
  const run = wattproof(['sheet', 'a.panel.yaml', '--format', 'json'], { cwd, env: fresh() })
  const { version, source, pages, fields, unused } = JSON.parse(run.out)
  expect({ code: run.code, version, source, pages }).toEqual({
    code: 0,
    version: 1,
    source: 'sheets/tern-110.pdf',
    pages: 2,
  })
  const field = (pointer: string) => fields.find((one: { field: string }) => one.field === pointer)
  expect(field('/stc/voc')).toMatchObject({ typed: '22.1 V', status: 'same', page: 2, label: expect.any(String) })
  expect(field('/stc/voc').box).toHaveLength(4)
  expect(field('/weight')).toMatchObject({ typed: '2.6 kg', status: 'other', text: expect.stringContaining('2.2') })
  expect(unused).toContainEqual(expect.objectContaining({ field: '/stc/imp', page: 2 }))
  const text = wattproof(['sheet', 'a.panel.yaml'], { cwd, env: fresh() }).out
  expect(text).toMatch(/^\/weight +2\.6 kg +other: 2\.2 kg +page 2: Weight/m)
  expect(text).toMatch(/^\/stc\/imp +not typed: 5\.92 A/m)
})

test.each([
  ['a sheet that is not there', { 'a.panel.yaml': tern }, 'a.panel.yaml', 'is not there'],
  [
    'a record that names none',
    { 'a.panel.yaml': tern.replace('sheets/tern-110.pdf', 'printed') },
    'a.panel.yaml',
    'names no PDF',
  ],
  ['a battery', { 'a.battery.yaml': 'format: 1\n' }, 'a.battery.yaml', 'only sheets of panels are read'],
  ['no PDF', { 'a.panel.yaml': tern, 'sheets/tern-110.pdf': 'text' }, 'a.panel.yaml', 'cannot be read'],
])('sheet says why it has nothing to print: %s', (_, files, path, why) => {
  const run = wattproof(['sheet', path], { cwd: scratch(files), env: fresh() })
  expect([run.code, run.out, run.err]).toEqual([2, '', expect.stringContaining(why)])
})

describe('new panel --from', () => {
  const avocet = `${process.cwd()}/samples/library/sheets/avocet.pdf`

  test('drafts what the sheet is certain of, each value with its page, marked as read by a program', () => {
    const run = wattproof(['new', 'panel', '--from', 'samples/library/sheets/tern-110.pdf'], { env: fresh() })
    expect(run.code).toBe(0)
    const draft = parse(run.out)
    expect(draft.stc).toMatchObject({ pmax: '110 W', vmp: '18.6 V', imp: '5.92 A', voc: '22.1 V', isc: '6.31 A' })
    expect(draft).toMatchObject({
      weight: '2.2 kg',
      datasheet: { typed_by: 'sheet', sha256: expect.stringMatching(/^[0-9a-f]{64}$/) },
    })
    expect(run.out).toMatch(/^ {2}voc: 22\.1 V +# page 2: /m)
  })

  test('lists the models where there are several and none is named', () => {
    const run = wattproof(['new', 'panel', '--from', avocet], { env: fresh() })
    expect([run.code, run.out]).toEqual([2, ''])
    expect(run.err).toMatch(/Avocet 50[\s\S]*Avocet 120/)
    const one = wattproof(['new', 'panel', '--from', avocet, '--model', 'Avocet 120'], { env: fresh() })
    expect(parse(one.out)).toMatchObject({ name: expect.stringContaining('120'), stc: { pmax: '120 W' } })
    const none = wattproof(['new', 'panel', '--from', avocet, '--model', 'Heron 3'], { env: fresh() })
    expect([none.code, none.err]).toEqual([2, expect.stringContaining('Heron 3')])
  })

  test('--all -o writes one file for each model and none over another', () => {
    const cwd = folderWith('a.txt', '')
    const args = ['new', 'panel', '--from', 'sheets/avocet.pdf', '--all', '-o', 'panels']
    expect(wattproof(args, { cwd, env: fresh() }).code).toBe(0)
    const made = readdirSync(join(cwd, 'panels'))
    expect(made.length).toBeGreaterThan(1)
    const before = made.map((name) => readFileSync(join(cwd, 'panels', name), 'utf8'))
    const again = wattproof(args, { cwd, env: fresh() })
    expect([again.code, again.err]).toEqual([2, expect.stringContaining('is there already and stays as it is')])
    expect(made.map((name) => readFileSync(join(cwd, 'panels', name), 'utf8'))).toEqual(before)
    const found = JSON.parse(wattproof(['check', 'panels', '--format', 'json'], { cwd, env: fresh() }).out)
    const rules = found.files.flatMap((file: { findings: { rule: string }[] }) => file.findings.map(({ rule }) => rule))
    expect(new Set(rules)).toEqual(new Set(['sheet-not-looked-at']))
  })

  test.each([
    [['--all'], 'new panel --from'],
    [['--from', 'a.txt'], '.pdf'],
    [['--from', 'missing.pdf'], 'missing.pdf'],
  ])('%j is refused in words', (args, why) => {
    const cwd = scratch({ 'a.txt': 'x' })
    const run = wattproof(['new', 'panel', ...args], { cwd, env: fresh() })
    expect([run.code, run.out, run.err]).toEqual([2, '', expect.stringContaining(why)])
  })
})

test('what was read of a sheet is kept; a cut or foreign cache is read anew, and --no-cache writes none', () => {
  const cwd = folderWith('a.panel.yaml', heavier)
  const env = fresh()
  const check = (...more: string[]) => wattproof(['check', 'a.panel.yaml', ...more], { cwd, env })
  const kept = () => readdirSync(env.XDG_CACHE_HOME, { recursive: true }).filter((f) => String(f).endsWith('.json'))
  const first = check('--no-cache')
  expect(kept()).toEqual([])
  expect(check().out).toBe(first.out)
  expect(kept()).toHaveLength(1)
  const path = join(env.XDG_CACHE_HOME, String(kept()[0]))
  const whole = readFileSync(path, 'utf8')
  for (const spoiled of [whole.slice(0, 300), 'null', '{"pages":1,"problem":null,"models":[{}]}']) {
    writeFileSync(path, spoiled)
    expect(check().out).toBe(first.out)
    expect(readFileSync(path, 'utf8')).toBe(whole)
  }
})

test('what another version kept is left alone', () => {
  const cwd = folderWith('a.panel.yaml', heavier)
  const env = fresh()
  const check = () => wattproof(['check', 'a.panel.yaml'], { cwd, env }).out
  const first = check()
  const folder = join(env.XDG_CACHE_HOME, 'wattproof/sheets')
  const [version = ''] = readdirSync(folder)
  const [name = ''] = readdirSync(join(folder, version))
  const other = readFileSync(join(folder, version, name), 'utf8').replaceAll('2.2 kg', '2.6 kg')
  renameSync(join(folder, version), join(folder, 'other'))
  writeFileSync(join(folder, 'other', name), other)
  expect(check()).toBe(first)
  expect(first).toContain('the sheet prints 2.2 kg')
  expect(readFileSync(join(folder, 'other', name), 'utf8')).toBe(other)
})

test('a cache that cannot be written is no failure', () => {
  const cwd = folderWith('a.panel.yaml', heavier)
  mkdirSync(join(cwd, 'cache'))
  writeFileSync(join(cwd, 'cache/wattproof'), 'a file, no folder')
  const run = wattproof(['check', 'a.panel.yaml'], { cwd, env: { XDG_CACHE_HOME: join(cwd, 'cache') } })
  expect([run.code, run.err, run.out]).toEqual([0, '', expect.stringContaining('unlike-sheet')])
})
