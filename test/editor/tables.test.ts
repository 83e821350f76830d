import { cpSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterEach, expect, test } from 'vitest'
import type {
  ClimateResult,
  PageResult,
  PanelsResult,
  RowsResult,
  TableResult,
} from '../../server/src/editor/protocol.ts'
import { scratch, wattproof } from '../terminal/run.ts'
import { startServer, type Client } from './client.ts'

let client: Client
afterEach(() => client.stop())

/** A server in a copy of some samples. */
async function startedIn(samples: string, settings = '') {
  const folder = scratch(settings === '' ? {} : { 'wattproof.yaml': settings })
  cpSync(`samples/${samples}`, folder, { recursive: true, force: settings === '' })
  client = await startServer({ folders: [pathToFileURL(folder).href] })
  return folder
}

test('the table of all panels is that of the command line, by the paths from their common folder', async () => {
  const folder = await startedIn('library')
  const { out } = wattproof(['table', '.', '--kind', 'panel', '--format', 'csv'], { cwd: join(folder, 'panels') })
  await client.open('untitled:draft.panel.yaml', 'format: 1\nname: Draft\n')
  const table = await client.request<TableResult>('wattproof/table', { kind: 'panel', format: 'csv' })
  expect(table!.rows).toBe(16)
  const sorted = (text: string) => text.split('\n').sort()
  expect(sorted(table!.text)).toEqual(sorted(out))
  const markdown = await client.request<TableResult>('wattproof/table', { kind: 'panel', format: 'markdown' })
  expect(markdown!.text).toMatch(/^\| file \| format \| name \|/)
  expect(await client.request('wattproof/table', { kind: 'battery', format: 'csv' })).toBeNull()
})

test('all panels side by side, a table for each question, as the command line compares them', async () => {
  const folder = await startedIn('library')
  const page = await client.request<PanelsResult>('wattproof/panels', {})
  const markdown = wattproof(['compare', 'panels', '--format', 'markdown'], { cwd: folder }).out
  const [, tern = ''] = /^(\| tern-110 \|.*)$/m.exec(markdown) ?? []
  const cells = tern.split(' | ').slice(1, 3)
  expect(cells).toEqual(['17.1 %', '17.1 %'])
  expect(page!.text).toMatch(/^## Efficiency\n\n\| panel \| from its size \| as printed \|\n/)
  expect(page!.text).toContain(`| tern-110 | ${cells.join(' | ')} |\n`)
  expect(page!.text.match(/^## /gm)).toHaveLength(6)
  expect(page!.text).toMatch(/\nCommon practice, no source: [^\n]+\n$/)
})

test('panels whose records have errors are marked, and named before the tables', async () => {
  const folder = await startedIn('mistakes')
  const page = await client.request<PanelsResult>('wattproof/panels', {})
  const markdown = wattproof(['compare', '.', '--format', 'markdown'], { cwd: folder }).out
  const [named = ''] = /^.* have errors; .*$/m.exec(markdown) ?? []
  expect(named).toContain('voc-vmp-swapped')
  expect(page!.text.startsWith(`\\* ${named}\n\n## Efficiency\n`)).toBe(true)
  expect(page!.text.match(/^\| voc-vmp-swapped \\\* \|/gm)).toHaveLength(6)
  expect(page!.text).not.toMatch(/^\| price-digit-missing \\\* \|/m)
})

test('rows become records by the headings that the library explains, with what is not read', async () => {
  const folder = await startedIn('library', 'format: 1\ncolumns: { U0: stc.voc V }\n')
  const made = await client.request<RowsResult>('wattproof/rows', {
    kind: 'panel',
    from: 'panels.csv',
    folder: pathToFileURL(join(folder, 'panels')).href,
    text: 'Name;U0;Colour\nKnot 70;22,1;black\n',
  })
  expect(made).toEqual({
    records: [
      {
        name: 'knot-70.panel.yaml',
        text: 'format: 1\nname: Knot 70\nstc:\n  voc: 22.1 V\n# not in a field, panels.csv:2: Colour: black\n',
      },
    ],
    notes: [expect.stringMatching(/^column `Colour` is not read: /)],
  })
})

test.each([
  { what: 'a table without a field', text: 'Colour\nblack\n', problem: /^panels\.csv has no column that is a field/ },
  { what: 'two rows of one name', text: 'name,voc\nA,1\na,2\n', problem: /^rows 2 and 3 of panels\.csv would both be/ },
])('$what is refused with its place', async ({ text, problem }) => {
  const folder = pathToFileURL(await startedIn('library')).href
  const made = await client.request<RowsResult>('wattproof/rows', { kind: 'panel', from: 'panels.csv', folder, text })
  expect(made).toEqual({ problem: expect.stringMatching(problem) })
})

test('a climate is gathered from hourly weather or guessed from a latitude, as on the command line', async () => {
  await startedIn('systems')
  const guessed = await client.request<ClimateResult>('wattproof/climate', { latitude: '43.5' })
  expect(guessed).toEqual({ text: wattproof(['new', 'climate', '--latitude', '43.5']).out })
  expect(await client.request<ClimateResult>('wattproof/climate', { latitude: 'north' })).toEqual({
    problem: 'A number of degrees from -66 to 66 is expected, south negative.',
  })
  const broken = await client.request<ClimateResult>('wattproof/climate', { name: 'a.epw', text: 'no weather' })
  expect(broken).toEqual({ problem: expect.stringMatching(/^a\.epw:\d+: /) })
})

test('the form for measuring is the one of the command line', async () => {
  const folder = await startedIn('systems')
  const path = join(folder, 'boat.system.yaml')
  const uri = pathToFileURL(path).href
  await client.open(uri, readFileSync(path, 'utf8'))
  const about = { textDocument: { uri }, units: 'metric', revision: null }
  const page = await client.request<PageResult>('wattproof/page', { ...about, form: true })
  expect(page!.html).toBe(wattproof(['report', path, '--form'], { cwd: folder }).out)
})

test('a page in other units than those of the window says its findings in them, too', async () => {
  const folder = await startedIn('systems')
  const path = join(folder, 'hazards/four-in-series.system.yaml')
  const uri = pathToFileURL(path).href
  await client.open(uri, readFileSync(path, 'utf8'))
  const about = { textDocument: { uri }, revision: null }
  const metric = await client.request<PageResult>('wattproof/page', { ...about, units: 'metric' })
  const us = await client.request<PageResult>('wattproof/page', { ...about, units: 'us' })
  expect(metric!.html).toMatch(/V at -5\s°C/)
  expect(us!.html).toMatch(/V at 23\s°F/)
  expect(us!.html).not.toMatch(/V at -5\s°C/)
})
