import { readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { wattproof } from './run.ts'
import { controller, run, system, van } from './surface-library.ts'

test.each([
  { name: 'CRLF', change: (text: string) => text.replaceAll('\n', '\r\n') },
  { name: 'a byte order mark', change: (text: string) => `\uFEFF${text}` },
])('--write keeps $name and every other character', ({ change }) => {
  const cwd = van(change(system()))
  expect(run(cwd, '--write', 'large').code).toBe(0)
  const written = readFileSync(join(cwd, 'van.system.yaml'), 'utf8')
  const undone = written
    .replace(/'large', count: 6/, "'small', count: 2")
    .replace(/in_series: \d, in_parallel: \d \}(\r?\n) {4}controller/, 'in_series: 2, in_parallel: 1 }$1    controller')
  expect(written).not.toBe(undone)
  expect(undone).toBe(change(system()))
})

describe('--write adds what the array lacks', () => {
  const wired = 'wiring: { in_series: 3, in_parallel: 2 }'
  test.each([
    { name: 'no count', from: ', count: 2', to: '' },
    { name: 'an empty count', from: 'count: 2', to: 'count:' },
    { name: 'no wiring', from: /\n *wiring:.*/, to: '' },
    { name: 'an empty wiring', from: /(?<=wiring:).*/, to: '' },
    { name: 'a wiring of nothing', from: /(?<=wiring: ).*/, to: '{}' },
    { name: 'no number of strings', from: ', in_parallel: 1', to: '' },
    { name: 'no length of strings', from: 'in_series: 2, ', to: '' },
  ])('$name', ({ from, to }) => {
    const cwd = van(system().replace(from, to))
    expect(system()).not.toBe(system().replace(from, to))
    expect(run(cwd, '--write', 'large')).toMatchObject({ code: 0, err: '' })
    const written = readFileSync(join(cwd, 'van.system.yaml'), 'utf8')
    const [panels, wiring] = [/panels:.*/.exec(written)?.[0], /wiring:.*/.exec(written)?.[0]]
    expect(panels).toContain("panel: 'large', count: 6, surface: roof")
    expect(wiring?.replace(/in_parallel: (\d), in_series: (\d)/, 'in_series: $2, in_parallel: $1')).toBe(wired)
    const others = (text: string) => text.replace(/(panels|\n *wiring):.*/g, '')
    expect(others(written)).toBe(others(system()))
  })
})

test('--write adds nothing to a file of which a part cannot be read', () => {
  const broken = system().replace(', count: 2', '').replace('  - { id: bonnet', '  { id: bonnet')
  const cwd = van(broken)
  const { code, err } = run(cwd, '--write', 'large')
  expect([code, err]).toEqual([2, expect.stringContaining('correct the file first')])
  expect(readFileSync(join(cwd, 'van.system.yaml'), 'utf8')).toBe(broken)
})

test('--write into a system that is JSON', () => {
  const json = (
    id: string,
    count: number,
    series: number,
    parallel: number,
  ) => `{ "format": 1, "name": "A van", "kind": "vehicle",
  "surfaces": [{ "id": "roof", "size": { "length": "2.6 m", "width": "1.7 m" }, "mounting": "bonded" }],
  "arrays": [{ "id": "main", "panels": [{ "panel": "${id}", "count": ${count}, "surface": "roof" }],
    "wiring": { "in_series": ${series}, "in_parallel": ${parallel} }, "controller": "c100" }],
  "battery": { "battery": "bank", "in_series": 1, "in_parallel": 2 } }
`
  const cwd = van(system(), { 'van.system.json': json('small', 2, 2, 1) })
  const { code, out, err } = wattproof(['compare', 'van.system.json', '--surface', 'roof', '--write', 'large'], { cwd })
  expect([code, err]).toEqual([0, ''])
  const [, series, parallel] = / (\d) in series x (\d)/.exec(out)!
  const whole = json('large', 6, Number(series), Number(parallel))
  expect(readFileSync(join(cwd, 'van.system.json'), 'utf8')).toBe(whole)

  const unwired = (text: string) => text.replace(/,\n *"wiring": \{.*?\}/, '')
  const other = van(system(), { 'van.system.json': unwired(json('small', 2, 2, 1)) })
  wattproof(['compare', 'van.system.json', '--surface', 'roof', '--write', 'large'], { cwd: other })
  const written: unknown = JSON.parse(readFileSync(join(other, 'van.system.json'), 'utf8'))
  expect(written).toEqual(JSON.parse(whole))
})

describe('--write onto a surface without an array', () => {
  const deck = system().replace(
    '  - { id: bonnet',
    '  - { id: deck, size: { length: 2.6 m, width: 1.7 m }, mounting: bonded }\n  - { id: bonnet',
  )
  const write = (cwd: string, file = 'van.system.yaml') =>
    wattproof(['compare', file, '--surface', 'deck', '--write', 'large'], { cwd })
  const added = `  - id: deck
    panels: [{ panel: 'large', count: 6, surface: deck }]
    wiring: { in_series: 3, in_parallel: 2 }
    controller: c100
`
  const none = deck.replace(/arrays:[^]*?(?=battery:)/, '')

  test.each([
    { name: 'as the one before it', text: deck, place: 'battery: {', adds: added },
    { name: 'CRLF', text: deck.replaceAll('\n', '\r\n'), place: 'battery: {', adds: added.replaceAll('\n', '\r\n') },
    { name: 'no arrays yet', text: none, place: 'battery: {', adds: `arrays:\n${added.replaceAll("'", '')}` },
    { name: 'arrays left empty', text: none.replace('battery: {', 'arrays:\nbattery: {'), place: 'battery: {', adds: added.replaceAll("'", '') }, // prettier-ignore
  ])('$name', ({ text, place, adds }) => {
    const cwd = van(text)
    const { code, out, err } = write(cwd)
    expect([code, err]).toEqual([0, ''])
    expect(out).toBe(
      'van.system.yaml: 6 x large on deck, 3 in series x 2, as the new array deck, on a controller c100 of its own; its cable is not written\n',
    )
    const written = readFileSync(join(cwd, 'van.system.yaml'), 'utf8')
    const at = text.indexOf(place)
    expect(written).toBe(text.slice(0, at) + adds + text.slice(at))
    const review = JSON.parse(wattproof(['review', 'van.system.yaml', '--format', 'json'], { cwd }).out)
    expect(review.arrays.at(-1)).toMatchObject({ id: 'deck', pmax_stc_w: 660 })
  })

  test('JSON', () => {
    const json = `{
  "format": 1,
  "name": "A van",
  "kind": "vehicle",
  "surfaces": [
    { "id": "roof", "size": { "length": "2.6 m", "width": "1.7 m" }, "mounting": "bonded" },
    { "id": "deck", "size": { "length": "2.6 m", "width": "1.7 m" }, "mounting": "bonded" }
  ],
  "arrays": [
    {
      "id": "deck",
      "panels": [{ "panel": "small", "count": 2, "surface": "roof" }],
      "wiring": { "in_series": 2, "in_parallel": 1 },
      "controller": "c100"
    }
  ],
  "battery": { "battery": "bank", "in_series": 1, "in_parallel": 2 }
}
`
    const cwd = van(system(), { 'van.system.json': json })
    expect(write(cwd, 'van.system.json').code).toBe(0)
    expect(readFileSync(join(cwd, 'van.system.json'), 'utf8')).toBe(
      json.replace(
        '    }\n  ],',
        `    },
    {
      "id": "deck-2",
      "panels": [{ "panel": "large", "count": 6, "surface": "deck" }],
      "wiring": { "in_series": 3, "in_parallel": 2 },
      "controller": "c100"
    }
  ],`,
      ),
    )
  })

  test('of several controllers the one that the system has; without one none is guessed', () => {
    const more = { 'c150.controller.yaml': controller(150) }
    const cwd = van(deck, more)
    expect(write(cwd).out).toContain('on a controller c100 of its own')
    const bare = van(none, more)
    expect(write(bare).out).toContain('without a controller: c100, c150 would take them; name one in the file')
    expect(readFileSync(join(bare, 'van.system.yaml'), 'utf8')).toContain(
      'wiring: { in_series: 3, in_parallel: 2 }\nbattery:',
    )
  })

  test('no controller at all, or no place for an array: the file stays', () => {
    const cwd = van(deck.replace('    controller: c100\n', ''))
    rmSync(join(cwd, 'c100.controller.yaml'))
    expect(write(cwd)).toMatchObject({ code: 2, err: expect.stringContaining('the library has no controller') })
    const odd = van(none.replace('battery: {', 'arrays: later\nbattery: {'))
    expect(write(odd)).toMatchObject({ code: 2, err: expect.stringContaining('cannot take another array') })
    expect(readFileSync(join(odd, 'van.system.yaml'), 'utf8')).toContain('arrays: later\n')
  })
})

describe('--write into an array that names no surface', () => {
  const unplaced = system().replace(', surface: roof', '')
  const filled = (text: string) =>
    text
      .replace(/panels: [^#\n]*/, "panels: [{ panel: 'large', count: 6, surface: roof }] ")
      .replace(/wiring: .*/, 'wiring: { in_series: 3, in_parallel: 2 }')
  const written = (cwd: string) => readFileSync(join(cwd, 'van.system.yaml'), 'utf8')

  test.each([
    { name: 'the only one', text: unplaced },
    { name: 'without a count', text: unplaced.replace(', count: 2', '') },
    {
      name: 'called like the surface',
      text: unplaced.replace('id: main', 'id: roof').replace('battery: {', '  - id: spare\n    panels: []\nbattery: {'),
    },
  ])('$name', ({ text }) => {
    const cwd = van(text)
    expect(run(cwd, '--write', 'large')).toMatchObject({ code: 0, err: '' })
    expect(written(cwd)).toBe(filled(text))
  })

  test.each([
    { name: 'an empty list', panels: 'panels: [] # for now' },
    { name: 'no list', panels: 'panels: # for now' },
  ])('$name', ({ panels }) => {
    const text = system().replace(/panels: .*/, panels)
    const cwd = van(text)
    expect(run(cwd, '--write', 'large')).toMatchObject({ code: 0, err: '' })
    expect(written(cwd)).toBe(filled(text.replace(panels, 'panels: # for now')).replace("'large'", 'large'))
  })

  test('one of several has to be named', () => {
    const text = unplaced.replace('battery: {', '  - id: spare\n    panels: []\nbattery: {')
    const cwd = van(text)
    expect(run(cwd, '--write', 'large')).toMatchObject({
      code: 2,
      err: 'wattproof: --write large: the panels of an array name no surface (main, spare): name the one that lies on roof with --array, or its surface in the file\n',
    })
    expect(written(cwd)).toBe(text)
    expect(run(cwd, '--write', 'large', '--array', 'main')).toMatchObject({ code: 0, err: '' })
    expect(written(cwd)).toBe(filled(text))
  })

  test('a list that is none is left alone', () => {
    const text = system().replace(/panels: .*/, 'panels: later')
    const cwd = van(text)
    expect(run(cwd, '--write', 'large')).toMatchObject({ code: 2, err: expect.stringContaining('is no list') })
    expect(written(cwd)).toBe(text)
  })
})
