import { readdirSync, readFileSync } from 'node:fs'
import { afterEach, expect, test } from 'vitest'
import { bare, folderOf, full, startServer, type Client } from './client.ts'

const samples = 'samples/systems'
const text = (name: string) => readFileSync(`${samples}/${name}`, 'utf8')
const names = (readdirSync(samples, { recursive: true }) as string[])
  .map((name) => name.replaceAll('\\', '/'))
  .filter((name) => name.endsWith('.yaml') && !name.startsWith('hazards/'))
const library = () => folderOf(Object.fromEntries(names.map((name) => [name, text(name)])))

const puffin = 'panels/puffin-115.panel.yaml'
const gannet = 'panels/gannet-200.panel.yaml'
const boat = 'boat.system.yaml'
const van = 'van.system.yaml'
const highVoltage = (record: string) => record.replace(/voc: 2\d\.\d V/, 'voc: 74.5 V')
const rules = (found: readonly { code?: unknown }[] = []) => found.map(({ code }) => code)

interface Report {
  items: { uri: string; resultId: string; items: { code: string }[] }[]
}

let client: Client
let folder: ReturnType<typeof folderOf>
afterEach(async () => {
  await client.stop()
  folder.dispose()
})

const refreshed = () => client.until(() => client.asked.some(({ method }) => method === 'workspace/diagnostic/refresh'))

/** Asks for what is new about closed files, again and again as an editor does, until a rule is reported for one. */
async function reported(name: string, rule: string) {
  const known = new Map<string, string>()
  for (;;) {
    const previousResultIds = [...known].map(([uri, value]) => ({ uri, value }))
    const { items } = await client.request<Report>('workspace/diagnostic', { previousResultIds })
    if (items.some(({ uri, items }) => uri === folder.uriOf(name) && rules(items).includes(rule))) return
    for (const { uri, resultId } of items) known.set(uri, resultId)
  }
}

const changedOnDisk = (...files: string[]) =>
  client.notify('workspace/didChangeWatchedFiles', {
    changes: files.map((name) => ({ uri: folder.uriOf(name), type: 2 })),
  })

/** Asks for the findings of an open file whenever the server says that they may have changed, until they are so. */
async function pulled(name: string, isSo: (found: unknown[]) => boolean) {
  for (;;) {
    client.asked.length = 0
    if (isSo(rules(await client.pull(folder.uriOf(name))))) return
    await refreshed()
  }
}
const hasHighVoltage = (found: unknown[]) => found.includes('string-voltage-high')

test('an edit of a panel record reaches the open system and the closed one, unsaved', async () => {
  folder = library()
  client = await startServer({ capabilities: full, folders: [folder.uri] })
  await client.open(folder.uriOf(boat), text(boat))
  await client.open(folder.uriOf(puffin), text(puffin))
  await client.open(folder.uriOf(gannet), text(gannet))
  expect(rules(await client.pull(folder.uriOf(boat)))).not.toContain('string-voltage-high')

  await client.change(folder.uriOf(puffin), 2, [{ text: highVoltage(text(puffin)) }])
  await client.change(folder.uriOf(gannet), 2, [{ text: highVoltage(text(gannet)) }])
  await reported(van, 'string-voltage-high')
  await pulled(boat, hasHighVoltage)
})

test('an editor that is pushed to hears of the closed system too, and that it is well again when the panel is closed unsaved', async () => {
  folder = library()
  client = await startServer({ capabilities: bare, folders: [folder.uri] })
  const reported = () => rules(client.published.get(folder.uriOf(van)))
  await client.open(folder.uriOf(gannet), text(gannet))
  await client.change(folder.uriOf(gannet), 2, [{ text: highVoltage(text(gannet)) }])
  await client.until(() => reported().includes('string-voltage-high'))
  await client.close(folder.uriOf(gannet))
  await client.until(() => !reported().includes('string-voltage-high'))
})

test('an editor that is pushed to still shows the findings of a file that it closes', async () => {
  folder = folderOf({ 'thin.system.yaml': text('hazards/over-weight.system.yaml') })
  const uri = folder.uriOf('thin.system.yaml')
  client = await startServer({ capabilities: bare, folders: [folder.uri] })
  await client.until(() => client.published.has(uri))
  const before = client.published.get(uri)
  await client.open(uri, 'format: 1\n')
  await client.until(() => client.published.get(uri)!.length !== before!.length)
  await client.close(uri)
  await client.until(() => client.published.get(uri)!.length === before!.length)
  expect(rules(client.published.get(uri))).toEqual(rules(before))
})

test('what is unsaved wins over what changes on disk, until it is closed', async () => {
  folder = library()
  client = await startServer({ folders: [folder.uri] })
  await client.open(folder.uriOf(van), text(van))
  await client.open(folder.uriOf(boat), text(boat))
  await client.open(folder.uriOf(gannet), text(gannet))
  folder.write(gannet, highVoltage(text(gannet)))
  folder.write(puffin, highVoltage(text(puffin)))
  await changedOnDisk(gannet, puffin)
  await pulled(boat, hasHighVoltage)
  expect(rules(await client.pull(folder.uriOf(van)))).not.toContain('string-voltage-high')
  await client.close(folder.uriOf(gannet))
  await pulled(van, hasHighVoltage)
})

test('a record is unused as soon as the last system that names it names another', async () => {
  folder = library()
  client = await startServer({ folders: [folder.uri] })
  await client.open(folder.uriOf(van), text(van))
  await client.open(folder.uriOf(gannet), text(gannet))
  await client.pull(folder.uriOf(van))
  const isUnused = (found: unknown[]) => found.includes('unused-record')
  await pulled(gannet, (found) => !isUnused(found))
  await client.change(folder.uriOf(van), 2, [{ text: text(van).replace('gannet-200', 'skua-110') }])
  await pulled(gannet, isUnused)
  expect((await client.pull(folder.uriOf(gannet))).find(({ code }) => code === 'unused-record')).toMatchObject({
    severity: 4,
    message: 'No system of this library uses the panel gannet-200.',
    range: { start: { line: 1 } },
  })
})

test('folders side by side without settings are libraries of their own, and one that is closed is forgotten', async () => {
  folder = folderOf(
    Object.fromEntries(
      ['a', 'b'].flatMap((root) => [
        [`${root}/van.system.yaml`, text(van)],
        [`${root}/gannet-200.panel.yaml`, root === 'a' ? text(gannet) : highVoltage(text(gannet))],
      ]),
    ),
  )
  const [a, b] = ['a', 'b'].map((root) => folder.uriOf(root)) as [string, string]
  client = await startServer({ folders: [a, b] })
  const found = async (root: string) => {
    const report = await client.request<Report>('workspace/diagnostic', { previousResultIds: [] })
    return rules(report.items.find(({ uri }) => uri === `${root}/van.system.yaml`)?.items)
  }
  expect(await found(a)).not.toContain('ambiguous-record')
  expect(await found(a)).not.toContain('string-voltage-high')
  const symbols = async () => (await client.request<unknown[]>('workspace/symbol', { query: '' })).length
  expect(await symbols()).toBe(4)
  client.asked.length = 0
  await client.notify('workspace/didChangeWorkspaceFolders', { event: { added: [], removed: [{ uri: b, name: 'b' }] } })
  await refreshed()
  expect(await symbols()).toBe(2)
})
