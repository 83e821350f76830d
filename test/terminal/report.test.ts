import { cpSync, existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { git, scratch, wattproof } from './run.ts'

const boat = 'samples/systems/boat.system.yaml'

test('-o writes one file that stands alone: no script, no address, both leaves', () => {
  const cwd = scratch()
  expect(wattproof(['report', boat, '-o', join(cwd, 'boat.html')])).toMatchObject({ code: 0, out: '', err: '' })
  const page = readFileSync(join(cwd, 'boat.html'), 'utf8')
  expect(page).toMatch(/^<!doctype html>\n<html lang="en">/)
  expect(page).not.toMatch(/<script|javascript:|\bon\w+=|<link|@import|url\((?!#)|(?:src|href)=/i)
  expect(page.replaceAll('http://www.w3.org/2000/svg', '').match(/https?:/g)).toBeNull()
  expect(page.match(/<section class="leaf">/g)).toHaveLength(2)
  expect(page).toContain('It runs: fridge, instruments, lights and laptop (May to September)')
})

test.each([
  ['boat.system.yaml', 'months: [5, 6, 7, 8, 9]', 'months: [0, -1]'],
  ['batteries/example-lfp-100.battery.yaml', 'round_trip_efficiency: 95 %', 'round_trip_efficiency: 0'],
  ['batteries/example-lfp-100.battery.yaml', 'voltage: 14.2 V', 'voltage: -1'],
])('the review and the page of a library whose %s has an absurd number: %s as %s', (name, right, typed) => {
  const cwd = scratch()
  cpSync('samples/systems', cwd, { recursive: true })
  const text = readFileSync(join(cwd, name), 'utf8')
  expect(text).toContain(right)
  writeFileSync(join(cwd, name), text.replaceAll(right, typed))
  for (const command of ['review', 'report']) {
    const { out, err } = wattproof([command, 'boat.system.yaml'], { cwd })
    expect(out + err).not.toMatch(/Infinity|NaN|stumbled/)
    expect(out).toContain('Sailing boat')
  }
})

test.each([
  { options: ['--date', '2026-02-30'], says: /'--date <date>' argument '2026-02-30' is invalid\. Write a day/ },
  { options: ['--units', 'imperial'], says: /Allowed choices are metric, us/ },
  { options: ['--format', 'pdf'], says: /Allowed choices are html, markdown/ },
  { options: ['-o', boat], says: /is a record and stays as it is/ },
  { options: ['-o', '/nowhere/boat.html'], says: /cannot be written: its folder does not exist/ },
])('$options is refused with a reason, exit code 2', ({ options, says }) => {
  const before = readFileSync(boat, 'utf8')
  const run = wattproof(['report', boat, ...options])
  expect(run).toMatchObject({ code: 2, out: '' })
  expect(run.err).toMatch(says)
  expect(readFileSync(boat, 'utf8')).toBe(before)
})

test.each([
  ['samples/library/panels/tern-110.panel.yaml', /is no system description/],
  ['samples/systems', /is a folder; name one system/],
  ['nowhere.system.yaml', /there is no file/],
])('%s is no system', (path, says) => {
  const run = wattproof(['report', path])
  expect(run.code).toBe(2)
  expect(run.err).toMatch(says)
})

test('lengths, weights and temperatures come in the units that are asked for; cables stay as typed', () => {
  const page = (units: string) =>
    wattproof(['report', 'samples/systems/van.system.yaml', '--format', 'markdown', '--units', units]).out
  expect(page('metric')).toMatch(/\| 2 \| Gannet 200 \| [\d.]+ kg \|/)
  expect(page('metric')).toMatch(/10 AWG \| 5 m \|/)
  expect(page('us')).toMatch(/\| 2 \| Gannet 200 \| [\d.]+ lb \|/)
  expect(page('us')).toMatch(/10 AWG \| 16\.4 ft \|/)
  expect(page('us')).toContain('Air from 5 °F (given) to 93.2 °F (given).')
})

test('Markdown has the words and tables of the page, the months in place of the picture', () => {
  const { out, code } = wattproof(['report', boat, '--format', 'markdown', '--date', '2026-11-27'])
  expect(code).toBe(0)
  expect(out).toMatch(/^# Sailing boat, 10 m\n\nboat · 2026-11-27 · /)
  const { months } = JSON.parse(wattproof(['review', boat, '--format', 'json']).out) as {
    months: { yield_wh_day: number; load_wh_day: number }[]
  }
  expect(out).toContain(
    `| January | ${Math.round(months[0]!.yield_wh_day)} | ${Math.round(months[0]!.load_wh_day)} | 0 |`,
  )
  expect(out).toContain('## Cautions')
  expect(out).toContain('## Not checked, which is not the same as in order')
})

test('the page names the commit of the records, and says when one is not as it was committed', () => {
  const cwd = scratch()
  cpSync('samples/systems', join(cwd, 'systems'), { recursive: true })
  const head = () =>
    /boat · [\d-]+ · (.*)/.exec(
      wattproof(['report', 'systems/boat.system.yaml', '--format', 'markdown'], { cwd }).out,
    )![1]
  expect(head()).toBe('records without a revision')
  git(cwd, 'init', '-q')
  expect(head()).toBe('records not committed yet')
  git(cwd, 'add', '-A')
  git(cwd, 'commit', '-qm', 'Systems')
  const revision = `records at revision ${git(cwd, 'rev-parse', '--short=12', 'HEAD').trim()}`
  expect(head()).toBe(revision)
  git(cwd, 'mv', 'systems/van.system.yaml', 'systems/bus.system.yaml')
  expect(head(), 'another system').toBe(revision)
  cpSync('samples/library/panels/tern-110.panel.yaml', join(cwd, 'systems/panels/puffin-115.panel.yaml'))
  expect(head()).toBe(`${revision}, changed since`)
  expect(existsSync(join(cwd, 'systems/boat.html'))).toBe(false)
})

test('every system of the samples has a page, whatever is wrong or missing in it', () => {
  const { files } = JSON.parse(wattproof(['check', 'samples/systems', '--format', 'json']).out) as {
    files: { path: string; kind: string }[]
  }
  const systems = files.filter(({ kind }) => kind === 'system').map(({ path }) => path)
  expect(systems.length).toBeGreaterThan(30)
  for (const path of systems.filter((_, i) => i % 4 === 0)) {
    const { code, out, err } = wattproof(['report', path])
    expect({ path, code, err }).toEqual({ path, code: 0, err: '' })
    expect(out, path).not.toMatch(/\b(NaN|undefined|Infinity|null)\b/)
  }
}, 120_000)
