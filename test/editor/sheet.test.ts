import { cpSync, mkdtempSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterEach, expect, test } from 'vitest'
import { full, startServer, type Client } from './client.ts'

let client: Client
afterEach(() => client.stop())

test('a record is compared with its sheet while it is open, and a hover says what the sheet prints', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'beside-'))
  cpSync('samples/library', folder, { recursive: true })
  const uri = pathToFileURL(join(folder, 'panels/tern-110.panel.yaml')).href
  const text = readFileSync(join(folder, 'panels/tern-110.panel.yaml'), 'utf8').replace(
    'weight: 2.2 kg',
    'weight: 2.6 kg',
  )
  client = await startServer({ capabilities: full, folders: [pathToFileURL(folder).href] })
  await client.open(uri, text)
  const unlike = async () => (await client.pull(uri)).filter(({ code }) => code === 'unlike-sheet')
  for (let i = 0; i < 100 && (await unlike()).length === 0; i++) await new Promise((done) => setTimeout(done, 100))
  expect(await unlike()).toMatchObject([
    { message: expect.stringContaining('the sheet prints 2.2 kg (page 2, "Weight")') },
  ])
  const line = text.split('\n').findIndex((one) => one.startsWith('weight:'))
  const hover = await client.request('textDocument/hover', { textDocument: { uri }, position: { line, character: 9 } })
  expect(JSON.stringify(hover)).toContain('page 2: Weight 2.2 kg')

  const lines = text.split('\n')
  const without = lines
    .filter((one) => !/^ +imp:/.test(one))
    .join('\n')
    .replace(/, sha256: \w+/, '')
  await client.change(uri, 2, [{ text: without }])
  const actionsAt = async (start: string) => {
    const line = without.split('\n').findIndex((one) => one.startsWith(start))
    const at = { line, character: 2 }
    const range = { start: at, end: at }
    const about = { textDocument: { uri }, range, context: { diagnostics: [], only: ['refactor.rewrite'] } }
    return (await client.request<{ title: string }[]>('textDocument/codeAction', about)).map(({ title }) => title)
  }
  expect(await actionsAt('stc:')).toEqual([
    expect.stringMatching(/^Add imp: 5\.92 A, as page \d of the sheet prints it$/),
  ])
  expect(await actionsAt('datasheet:')).toEqual([
    'Add the fingerprint of the sheet, so that a replaced sheet is noticed',
  ])
}, 30_000)
