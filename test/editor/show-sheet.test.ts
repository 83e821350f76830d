import { cpSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterEach, expect, test } from 'vitest'
import { scratch } from '../terminal/run.ts'
import { full, startServer, type Client } from './client.ts'

interface Shown {
  readonly file: string
  readonly pages: number
  readonly rows: readonly {
    field: string
    name: string
    typed: string | null
    status: string
    printed: string | null
    page: number | null
  }[]
}

let client: Client
afterEach(() => client.stop())

/** A record of the sample library, with changes, open beside its sheet. */
async function opened(change: (text: string) => string, name = 'tern-110') {
  const folder = scratch()
  cpSync('samples/library', folder, { recursive: true })
  const path = join(folder, `panels/${name}.panel.yaml`)
  const uri = pathToFileURL(path).href
  const text = change(readFileSync(path, 'utf8'))
  client = await startServer({ capabilities: full, folders: [pathToFileURL(folder).href] })
  await client.open(uri, text)
  return { folder, text, about: { textDocument: { uri } } }
}

test('every field of a record beside what the sheet prints, in the order of the record', async () => {
  const { folder, about } = await opened((text) =>
    text.replace('weight: 2.2 kg', 'weight: 2.6 kg').replace(/^ +imp:.*\n/m, ''),
  )
  const shown = await client.request<Shown>('wattproof/sheet', about)
  expect(shown.file).toBe(pathToFileURL(join(folder, 'sheets/tern-110.pdf')).href)
  const row = (field: string) => shown.rows.find((one) => one.field === field)
  expect(row('/stc/voc')).toMatchObject({ name: 'Voc', typed: '22.1 V', status: 'same', page: 2 })
  expect(row('/weight')).toMatchObject({ typed: '2.6 kg', printed: '2.2 kg', status: 'other' })
  expect(row('/stc/imp')).toMatchObject({ typed: null, printed: '5.92 A', status: 'not typed' })
  expect(shown.rows.findIndex((one) => one.field === '/stc/vmp')).toBeLessThan(
    shown.rows.findIndex((one) => one.field === '/weight'),
  )
  expect(shown.rows.at(-1)!.status).toBe('not typed')
})

test.each([
  { lacks: 'a field', without: / *imp: 5\.92 A\n/, field: '/stc/imp', added: /\n +imp: 5\.92 A\n/ },
  { lacks: 'a group', without: /noct: .*\n/, field: '/noct/temperature', added: /\nnoct: \{ temperature: 46 °C \}\n/ },
  {
    lacks: 'a list',
    without: / *output: .*\n/,
    field: '/warranty/output/0/years',
    added: /\n +output: \[\{ years: 5 \}\]\n/,
  },
])('a record that lacks $lacks gets what the sheet prints', async ({ without, field, added }) => {
  const { text, about } = await opened((text) => text.replace(without, ''))
  await client.request('wattproof/sheet', about)
  const { edits } = await client.request<{ edits: readonly Edit[] }>('wattproof/sheetAddition', { ...about, field })
  expect(applied(text, edits)).toMatch(added)
})

test('a sheet that is not there, and a record that names none', async () => {
  const { about } = await opened((text) => text.replace('sheets/tern-110.pdf', 'sheets/gone.pdf'))
  expect(await client.request('wattproof/sheet', about)).toMatchObject({ problem: 'sheets/gone.pdf is not there.' })
  await client.stop()
  const none = await opened((text) => text.replace(/\ndatasheet:.*/, ''))
  expect(await client.request('wattproof/sheet', none.about)).toBeNull()
})

test('a draft of a record from a sheet: the models to choose from, then the record', async () => {
  const { folder } = await opened((text) => text)
  const params = (name: string) => ({
    file: pathToFileURL(join(folder, 'sheets', name)).href,
    folder: pathToFileURL(join(folder, 'panels')).href,
  })
  const one = await client.request<{ id: string; text: string }>('wattproof/draft', params('tern-110.pdf'))
  expect(one.id).toBe('tern-110')
  expect(one.text).toMatch(/^ {2}voc: 22\.1 V/m)
  expect(one.text).toContain('source: "../sheets/tern-110.pdf"')
  const several = await client.request<{ models: readonly string[] }>('wattproof/draft', params('avocet.pdf'))
  expect(several.models).toEqual(['Avocet 50', 'Avocet 120'])
  const chosen = await client.request<{ text: string }>('wattproof/draft', {
    ...params('avocet.pdf'),
    model: 'Avocet 120',
  })
  expect(chosen.text).toContain('model: Avocet 120')
  expect(await client.request('wattproof/draft', params('none.pdf'))).toEqual({ problem: 'none.pdf cannot be opened.' })
})

interface Edit {
  readonly range: { readonly start: Place; readonly end: Place }
  readonly newText: string
}
interface Place {
  readonly line: number
  readonly character: number
}

function applied(text: string, edits: readonly Edit[]): string {
  const lines = text.split('\n')
  const at = ({ line, character }: Place) => lines.slice(0, line).reduce((sum, one) => sum + one.length + 1, character)
  return edits.reduce(
    (now, { range, newText }) => now.slice(0, at(range.start)) + newText + now.slice(at(range.end)),
    text,
  )
}
