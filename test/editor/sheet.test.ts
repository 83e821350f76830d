import { cpSync, mkdtempSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterEach, expect, test } from 'vitest'
import { full, startServer, type Client } from './client.ts'

let client: Client
afterEach(() => client.stop())

test('a record is held against its sheet while it is open, and a hover says what the sheet prints', async () => {
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
}, 30_000)
