import { afterEach, describe, expect, test } from 'vitest'
import manifest from '../../package.json' with { type: 'json' }
import { bare, folderOf, full, startServer, tern, type Client } from './client.ts'

const uri = 'file:///nowhere/tern.panel.yaml'
const boatUri = 'file:///nowhere/boat.system.yaml'
const at = (line: number, character: number, about = uri) => ({
  textDocument: { uri: about },
  position: { line, character },
})

let client: Client
afterEach(() => client.stop())

describe.each([
  { name: 'full', capabilities: full },
  { name: 'bare', capabilities: bare },
])('a $name client', ({ name, capabilities }) => {
  test('gets every answer, and no request or registration that it cannot take', async () => {
    client = await startServer({ capabilities })
    await client.open(uri, tern)
    const hover = await client.request<{ contents: { kind: string } }>('textDocument/hover', at(4, 9))
    expect(hover.contents.kind).toBe(name === 'full' ? 'markdown' : 'plaintext')
    expect(await client.request('textDocument/completion', at(4, 2))).toBeInstanceOf(Array)
    expect(await client.request('textDocument/documentSymbol', { textDocument: { uri } })).not.toHaveLength(0)
    const range = { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } }
    expect(await client.request('textDocument/inlayHint', { textDocument: { uri }, range })).not.toHaveLength(0)
    await client.open(boatUri, 'format: 1\nname: Boat\narrays: [{ panels: [{ panel: tern }] }]\n')
    expect(await client.request('textDocument/codeLens', { textDocument: { uri } })).toHaveLength(2)
    await client.notify('workspace/didChangeConfiguration', { settings: { wattproof: { codeLens: false } } })
    client.given.settings = { codeLens: false }
    expect(await client.request('textDocument/codeLens', { textDocument: { uri } })).toEqual([])
    if (name === 'bare') expect(client.asked).toEqual([])
    expect(client.log).toEqual([])
  })

  test('is refused a rename with a reason', async () => {
    client = await startServer({ capabilities })
    await client.open(uri, tern)
    const answer = client.request('textDocument/rename', { ...at(4, 9), newName: 'gull' })
    await expect(answer).rejects.toThrow('Only the id of a record can be renamed')
  })
})

test('an editor that pulls findings but cannot be asked to pull again is pushed to', async () => {
  const capabilities = { ...full, workspace: { ...full.workspace, diagnostics: { refreshSupport: false } } }
  client = await startServer({ capabilities })
  expect(client.capabilities.diagnosticProvider).toBeUndefined()
  await client.open(boatUri, 'format: 1\nname: Boat\narrays: [{ panels: [{ panel: tern }] }]\n')
  const rules = () => client.published.get(boatUri)?.map(({ code }) => code)
  await client.until(() => rules()?.includes('unknown-record') ?? false)
  await client.open(uri, tern)
  await client.until(() => !rules()?.includes('unknown-record'))
})

test('the server says its version', async () => {
  client = await startServer()
  expect(client.serverInfo).toEqual({ name: 'wattproof', version: manifest.version })
})

test('folding, formatting and colours stay with other extensions', async () => {
  client = await startServer()
  expect(Object.keys(client.capabilities).filter((one) => /folding|format|semantic|color/i.test(one))).toEqual([])
  expect(client.capabilities.positionEncoding).toBe('utf-16')
  expect(client.capabilities.textDocumentSync).toMatchObject({ openClose: true, change: 2 })
})

test('hints follow the settings of the resource', async () => {
  client = await startServer({ settings: { hints: { units: true, derived: false } } })
  await client.open(uri, tern.replace('110 W', '110'))
  const range = { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } }
  const hints = await client.request<{ label: string }[]>('textDocument/inlayHint', { textDocument: { uri }, range })
  expect(hints.map(({ label }) => label)).toEqual([' W'])
})

test('a hint is explained through the connection too', async () => {
  client = await startServer()
  await client.open(uri, tern)
  const range = { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } }
  const [hint] = await client.request<object[]>('textDocument/inlayHint', { textDocument: { uri }, range })
  expect(await client.request('inlayHint/resolve', hint)).toMatchObject({
    tooltip: expect.stringContaining('Pmax / (1000 W/m2') as string,
  })
})

test('a skeleton of a kind, and nothing for a kind that does not exist', async () => {
  client = await startServer()
  expect(await client.request('wattproof/skeleton', { kind: 'panel' })).toMatchObject({
    text: expect.stringContaining('format: 1') as string,
  })
  expect(await client.request('wattproof/skeleton', { kind: 'toString' })).toBeNull()
})

describe('across files', () => {
  const boat = 'format: 1\nname: Boat\narrays:\n  - panels: [{ panel: tern, count: 4 }]\n'

  test('an unsaved record wins over the disk, and its users are looked at again', async () => {
    const folder = folderOf({ 'tern.panel.yaml': tern, 'boat.system.yaml': boat })
    client = await startServer({ folders: [folder.uri] })
    const [panel, system] = [folder.uriOf('tern.panel.yaml'), folder.uriOf('boat.system.yaml')]
    await client.open(system, boat)
    await client.pull(system)
    const hover = () => client.request<{ contents: { value: string } }>('textDocument/hover', at(3, 24, system))
    expect((await hover()).contents.value).toContain('110 W, flexible')
    await client.open(panel, tern)
    await client.pull(panel)
    client.asked.length = 0
    await client.change(panel, 2, [{ text: tern.replace('110 W', '120 W') }])
    await client.until(() => client.asked.some(({ method }) => method === 'workspace/diagnostic/refresh'))
    expect((await hover()).contents.value).toContain('120 W, flexible')
    await client.close(panel)
    await client.until(() => client.asked.filter(({ method }) => method === 'workspace/diagnostic/refresh').length > 1)
    expect((await hover()).contents.value).toContain('110 W, flexible')
    folder.dispose()
  })

  test('a rename waits for the records that are still being read', async () => {
    const folder = folderOf({ 'tern.panel.yaml': tern, 'boat.system.yaml': boat, 'van.system.yaml': boat })
    client = await startServer({ folders: [folder.uri] })
    await client.open(folder.uriOf('tern.panel.yaml'), tern)
    const { documentChanges } = await client.request<{ documentChanges: unknown[] }>('textDocument/rename', {
      ...at(1, 8, folder.uriOf('tern.panel.yaml')),
      newName: 'gull',
    })
    expect(documentChanges).toHaveLength(3)
    folder.dispose()
  })

  test.each([
    { form: 'documentChanges', documentChanges: true },
    { form: 'changes', documentChanges: false },
  ])('files renamed by hand take their ids along, as $form where those are asked for', async (able) => {
    const folder = folderOf({ 'tern.panel.yaml': tern, 'boat.system.yaml': boat })
    const workspaceEdit = { ...full.workspace!.workspaceEdit, documentChanges: able.documentChanges }
    client = await startServer({
      capabilities: { ...full, workspace: { ...full.workspace, workspaceEdit } },
      folders: [folder.uri],
    })
    await client.open(folder.uriOf('boat.system.yaml'), boat)
    await client.pull(folder.uriOf('boat.system.yaml'))
    const files = [{ oldUri: folder.uriOf('tern.panel.yaml'), newUri: folder.uriOf('gull.panel.yaml') }]
    const edit = await client.request<Record<string, unknown>>('workspace/willRenameFiles', { files })
    const range = { start: { line: 3, character: 22 }, end: { line: 3, character: 26 } }
    const uri = folder.uriOf('boat.system.yaml')
    expect(edit).toEqual(
      able.documentChanges
        ? { documentChanges: [{ textDocument: { uri, version: null }, edits: [{ range, newText: 'gull' }] }] }
        : { changes: { [uri]: [{ range, newText: 'gull' }] } },
    )
    folder.dispose()
  })

  test('a folder that is added is read, one that is removed is forgotten', async () => {
    const folder = folderOf({ 'tern.panel.yaml': tern })
    client = await startServer()
    const names = async () => (await client.request<unknown[]>('workspace/symbol', { query: '' })).length
    expect(await names()).toBe(0)
    const change = (event: object) =>
      client.notify('workspace/didChangeWorkspaceFolders', { event: { added: [], removed: [], ...event } })
    await change({ added: [{ uri: folder.uri, name: 'records' }] })
    await client.until(() => client.asked.some(({ method }) => method === 'workspace/diagnostic/refresh'))
    expect(await names()).toBe(1)
    await change({ removed: [{ uri: folder.uri, name: 'records' }] })
    expect(await names()).toBe(0)
    folder.dispose()
  })

  test('the server watches records and settings', async () => {
    client = await startServer()
    await client.until(() => client.asked.filter(({ method }) => method === 'client/registerCapability').length === 2)
    expect(JSON.stringify(client.asked)).toContain('**/*.{panel,controller,battery,climate,system}.{yaml,yml,json}')
  })
})
