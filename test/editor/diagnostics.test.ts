import { readFileSync } from 'node:fs'
import { afterEach, expect, test } from 'vitest'
import { bare, folderOf, full, startServer, tern, type Client } from './client.ts'

const slip = tern.replace('22.1 V', '2.21 V')
const uri = 'file:///nowhere/tern.panel.yaml'
const rules = (found: readonly { code?: unknown }[]) => found.map(({ code }) => code)

let client: Client
afterEach(() => client.stop())

test('a client that can pull is never pushed to', async () => {
  client = await startServer({ capabilities: full })
  await client.open(uri, slip)
  expect(rules(await client.pull(uri))).toContain('voc-below-vmp')
  await client.change(uri, 2, [
    { range: { start: { line: 7, character: 7 }, end: { line: 7, character: 13 } }, text: '22.1 V' },
  ])
  expect(rules(await client.pull(uri))).not.toContain('voc-below-vmp')
  expect(client.published.size).toBe(0)
  expect(client.capabilities.diagnosticProvider).toMatchObject({ identifier: 'wattproof', interFileDependencies: true })
})

test('a bare client is pushed to and cannot pull', async () => {
  client = await startServer({ capabilities: bare })
  expect(client.capabilities.diagnosticProvider).toBeUndefined()
  await client.open(uri, slip)
  await client.until(() => client.published.has(uri))
  expect(rules(client.published.get(uri)!)).toContain('voc-below-vmp')
  await client.change(uri, 2, [{ text: tern }])
  await client.until(() => !rules(client.published.get(uri)!).includes('voc-below-vmp'))
  await client.close(uri)
  await client.until(() => client.published.get(uri)!.length === 0)
})

test('place, severity, related places and data', async () => {
  client = await startServer()
  await client.open(uri, slip)
  const found = (await client.pull(uri)).find(({ code }) => code === 'voc-below-vmp')!
  expect(found).toMatchObject({
    severity: 1,
    source: 'wattproof',
    range: { start: { line: 7, character: 7 }, end: { line: 7, character: 13 } },
    data: { rule: 'voc-below-vmp', pointer: '/stc/voc' },
  })
  expect(found.relatedInformation![0]!.location.range.start.line).toBe(5)
})

test('of many places that a slip touches, three are named', async () => {
  client = await startServer()
  const record = readFileSync('samples/mistakes/inches-typed-as-mm.panel.yaml', 'utf8')
  await client.open(uri, record)
  const found = (await client.pull(uri)).find(({ code }) => code === 'efficiency-impossible')!
  expect(found.relatedInformation!.map(({ message }) => message)).toEqual([
    'Pmax 160 W',
    'width 26 1/4 in',
    'cells in series 36',
  ])
})

test('an old version that git shows is answered with nothing', async () => {
  client = await startServer()
  const old = 'git:/nowhere/tern.panel.yaml?%7B%22ref%22%3A%22HEAD%22%7D'
  await client.open(old, slip)
  expect(await client.pull(old)).toEqual([])
  expect(
    await client.request('textDocument/hover', { textDocument: { uri: old }, position: { line: 7, character: 8 } }),
  ).toBeNull()
  expect(client.log).toEqual([])
})

test('syntax findings are held back where another extension reports them', async () => {
  const broken = `${tern}notes: "open\n`
  client = await startServer({ initializationOptions: { syntaxElsewhere: true } })
  await client.open(uri, broken)
  expect(rules(await client.pull(uri))).not.toContain('yaml-syntax')
})

test('an unused acceptance is shown as unnecessary', async () => {
  client = await startServer()
  await client.open(uri, tern.replace('22.1 V', '22.1 V  # accept voc-below-vmp: measured'))
  const found = (await client.pull(uri)).find(({ code }) => code === 'acceptance-unused')!
  expect(found.tags).toEqual([1])
})

test('nothing new is answered with `unchanged`', async () => {
  client = await startServer()
  await client.open(uri, slip)
  const first = await client.request<{ resultId: string }>('textDocument/diagnostic', { textDocument: { uri } })
  const again = await client.request('textDocument/diagnostic', {
    textDocument: { uri },
    previousResultId: first.resultId,
  })
  expect(again).toEqual({ kind: 'unchanged', resultId: first.resultId })
})

test('a check that finds the same is not sent again', async () => {
  client = await startServer()
  await client.open(uri, slip)
  const first = await client.request<{ resultId: string }>('textDocument/diagnostic', { textDocument: { uri } })
  const ask = () =>
    client.request<{ kind: string }>('textDocument/diagnostic', {
      textDocument: { uri },
      previousResultId: first.resultId,
    })
  await client.change(uri, 2, [{ text: `${slip}# a note below\n` }])
  expect(await ask()).toEqual({ kind: 'unchanged', resultId: first.resultId })
  await client.change(uri, 3, [{ text: `# a note above\n${slip}` }])
  expect((await ask()).kind).toBe('full')
})

test('findings of files that are not open come with the workspace report, which is then held', async () => {
  const folder = folderOf({ 'tern.panel.yaml': slip, '.hidden/tern.panel.yaml': slip })
  client = await startServer({ folders: [folder.uri] })
  interface Report {
    items: { uri: string; resultId: string; items: { code: string }[] }[]
  }
  const first = await client.request<Report>('workspace/diagnostic', { previousResultIds: [] })
  expect(first.items.map((one) => one.uri)).toEqual([folder.uriOf('tern.panel.yaml')])
  expect(rules(first.items[0]!.items)).toContain('voc-below-vmp')

  const previousResultIds = first.items.map((one) => ({ uri: one.uri, value: one.resultId }))
  const held = client.request<Report>('workspace/diagnostic', { previousResultIds })
  const early = await Promise.race([held, client.pull(folder.uriOf('tern.panel.yaml'))])
  expect(early).toBeInstanceOf(Array)
  folder.remove('tern.panel.yaml')
  await client.notify('workspace/didChangeWatchedFiles', {
    changes: [{ uri: folder.uriOf('tern.panel.yaml'), type: 3 }],
  })
  expect((await held).items).toMatchObject([{ uri: folder.uriOf('tern.panel.yaml'), items: [] }])
  folder.dispose()
})

test('settings of a library hold for its records, and a change of them is seen at once', async () => {
  const folder = folderOf({
    'tern.panel.yaml': slip,
    'wattproof.yaml': 'format: 1\nseverities: { voc-below-vmp: hint }\n',
  })
  const record = folder.uriOf('tern.panel.yaml')
  client = await startServer({ folders: [folder.uri] })
  await client.open(record, slip)
  const severity = async () => (await client.pull(record)).find(({ code }) => code === 'voc-below-vmp')?.severity
  expect(await severity()).toBe(4)
  folder.write('wattproof.yaml', 'format: 1\n')
  client.asked.length = 0
  await client.notify('workspace/didChangeWatchedFiles', {
    changes: [{ uri: folder.uriOf('wattproof.yaml'), type: 2 }],
  })
  // a refresh that was due before may come first
  while ((await severity()) !== 1) {
    await client.until(() => client.asked.some(({ method }) => method === 'workspace/diagnostic/refresh'))
    client.asked.length = 0
  }
  folder.dispose()
})

test('files that only the client can see are asked of it', async () => {
  client = await startServer({ initializationOptions: { clientFiles: true }, folders: ['vscode-vfs://host/records'] })
  client.files.set('vscode-vfs://host/records/wattproof.yaml', 'format: 1\nseverities: { voc-below-vmp: off }\n')
  await client.notify('workspace/didChangeWatchedFiles', {
    changes: [{ uri: 'vscode-vfs://host/records/wattproof.yaml', type: 1 }],
  })
  await client.until(() => client.asked.some(({ method }) => method === 'wattproof/read'))
  await client.open('vscode-vfs://host/records/tern.panel.yaml', slip)
  expect(rules(await client.pull('vscode-vfs://host/records/tern.panel.yaml'))).not.toContain('voc-below-vmp')
  expect(client.asked.map(({ method }) => method)).toContain('wattproof/files')
})

test('the server ends well when it is asked to', async () => {
  client = await startServer()
  expect(await client.stop()).toBe(0)
  client = await startServer({ capabilities: bare })
})
