import { afterEach, expect, test } from 'vitest'
import { wattproof } from '../terminal/run.ts'
import { folderOf, startServer, tern, type Client } from './client.ts'

const record = `${tern}temperature_coefficients: { voc: -0.29 %/°C }\n`
const boat = 'format: 1\nname: Boat\nkind: boat\narrays:\n  - { id: a, panels: [{ panel: tern, count: 4 }] }\n'
const settings = 'format: 1\nsite: { coldest: -40 °C }\n'
const files = { 'wattproof.yaml': settings, 'panels/tern.panel.yaml': record, 'boats/boat.system.yaml': boat }

let client: Client
afterEach(() => client.stop())

async function hintsOf(uri: string): Promise<string[]> {
  const range = { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } }
  const hints = await client.request<{ label: string }[]>('textDocument/inlayHint', { textDocument: { uri }, range })
  return hints.map(({ label }) => label.trim())
}
const rulesOf = async (uri: string) => (await client.pull(uri)).map(({ code }) => code)

test.each([
  { what: 'a file opened alone', below: null },
  { what: 'a file of a folder that was opened below its library', below: 'panels' },
])('$what is under the settings above it', async ({ below }) => {
  const folder = folderOf(files)
  client = await startServer({ folders: below === null ? [] : [folder.uriOf(below)] })
  const uri = folder.uriOf('panels/tern.panel.yaml')
  await client.open(uri, record)
  await client.pull(uri)
  expect(await hintsOf(uri)).toContain('cold 26.3 V') // 22.1 V x (1 + 0.0029 x 65 K)
  folder.dispose()
})

test('it finds the records that it names, and those are no news of this window', async () => {
  const folder = folderOf({ ...files, 'panels/other.panel.yaml': record.replace('22.1 V', '2.21 V') })
  client = await startServer()
  const uri = folder.uriOf('boats/boat.system.yaml')
  await client.open(uri, boat)
  expect(await rulesOf(uri)).not.toContain('unknown-record')
  const news = client.request('workspace/diagnostic', { previousResultIds: [] })
  const silence = new Promise((resolve) => setTimeout(resolve, 600, 'silence'))
  expect(await Promise.race([news, silence])).toBe('silence')
  folder.dispose()
})

test('as on the command line, without settings only its own folder is around it', async () => {
  const folder = folderOf({ 'a/tern.panel.yaml': record, 'a/boat.system.yaml': boat, 'boat.system.yaml': boat })
  client = await startServer()
  const [beside, above] = [folder.uriOf('a/boat.system.yaml'), folder.uriOf('boat.system.yaml')]
  await client.open(beside, boat)
  expect(await rulesOf(beside)).not.toContain('unknown-record')
  await client.stop()
  client = await startServer()
  await client.open(above, boat)
  expect(await rulesOf(above)).toContain('unknown-record')
  expect(wattproof(['check', new URL(above).pathname]).out).toContain('unknown-record')
  folder.dispose()
})

test('a client that reads for the server is asked for the files around it', async () => {
  client = await startServer({ initializationOptions: { clientFiles: true } })
  const uri = 'file:///nowhere/library/panels/tern.panel.yaml'
  client.files.set('file:///nowhere/library/wattproof.yaml', settings)
  await client.open(uri, record)
  await client.pull(uri)
  expect(client.asked.find(({ method }) => method === 'wattproof/files')?.params).toMatchObject({
    folder: 'file:///nowhere/library/',
  })
  expect(await hintsOf(uri)).toContain('cold 26.3 V')
})
