import { readdirSync, readFileSync } from 'node:fs'
import { afterEach, expect, test } from 'vitest'
import { schemas } from '../../server/src/records/schemas.generated.ts'
import { skeleton } from '../../server/src/records/skeleton.ts'
import { bare, folderOf, full, startServer, tern, type Client } from './client.ts'
import { littleBoat } from './little-boat.ts'
import { typist } from './typist.ts'

const panels = 'samples/systems/panels'
const library = Object.fromEntries(
  ['panels', 'batteries', 'climates', 'controllers'].flatMap((folder) =>
    readdirSync(`samples/systems/${folder}`).map((name) => [
      `${folder}/${name}`,
      readFileSync(`samples/systems/${folder}/${name}`, 'utf8'),
    ]),
  ),
)

let client: Client
let folder: ReturnType<typeof folderOf> | undefined
afterEach(async () => {
  await client.stop()
  folder?.dispose()
  folder = undefined
})

const serious = (found: readonly { severity?: number; message: unknown }[]) =>
  found.filter(({ severity }) => severity! <= 2).map(({ message }) => String(message))

test.each([
  ['a record', 'panels/knot-70.panel.yaml', readFileSync(`${panels}/puffin-115.panel.yaml`, 'utf8')],
  ['a boat', 'boat.system.yaml', littleBoat],
])(
  '%s is typed key by key: no line is doubted while it is typed, and none at the end',
  async (_, name, text) => {
    folder = folderOf(library)
    client = await startServer({ folders: [folder.uri] })
    const uri = folder.uriOf(name)
    await client.open(uri, '')
    const typed = await typist(client, uri)
    const doubted: string[] = []
    for (const key of text) {
      const { line, found } = await typed.key(key)
      const here = found.filter(({ range }) => range.start.line <= line && line <= range.end.line)
      doubted.push(...serious(here).map((message) => `${typed.text.split('\n')[line]}| ${message}`))
    }
    expect(doubted).toEqual([])
    await client.notify('textDocument/didSave', { textDocument: { uri } })
    expect(serious(await client.pull(uri))).toEqual([])
  },
  300_000,
)

const uri = 'file:///nowhere/tern.panel.yaml'
const rules = (found: readonly { code?: unknown }[]) => found.map(({ code }) => code)
const end = { line: 10, character: 0 }
const insert = (text: string, at = end) => [{ range: { start: at, end: at }, text }]

test.each([
  'te',
  'weight: ',
  'weight: 2',
  'weight: 28.',
  'notes: "half of',
  'limits: { bend: 3',
  'temperature_coefficents:',
])('the half-typed line %j is quiet until another line is edited', async (half) => {
  client = await startServer()
  await client.open(uri, tern)
  await client.change(uri, 2, insert(half))
  expect(serious(await client.pull(uri))).toEqual([])
  await client.change(uri, 3, insert(' ', { line: 1, character: 13 }))
  const found = await client.pull(uri)
  if (half !== 'weight: 2') expect(found.some(({ range }) => range.start.line === 10)).toBe(true)
})

test('or until the file is saved', async () => {
  client = await startServer()
  await client.open(uri, tern)
  await client.change(uri, 2, insert('te'))
  expect(rules(await client.pull(uri))).not.toContain('colon-missing')
  client.asked.length = 0
  await client.notify('textDocument/didSave', { textDocument: { uri } })
  await client.until(() => client.asked.some(({ method }) => method === 'workspace/diagnostic/refresh'))
  expect(rules(await client.pull(uri))).toContain('colon-missing')
})

test('or until two seconds have passed, and then the client is asked to look again', async () => {
  client = await startServer()
  await client.open(uri, tern)
  await client.change(uri, 2, insert('te'))
  expect(rules(await client.pull(uri))).not.toContain('colon-missing')
  for (let found: unknown[] = []; !found.includes('colon-missing'); found = rules(await client.pull(uri))) {
    client.asked.length = 0
    await client.until(() => client.asked.some(({ method }) => method === 'workspace/diagnostic/refresh'))
  }
})

test('a client that is pushed to gets them after two seconds', async () => {
  client = await startServer({ capabilities: bare })
  await client.open(uri, tern)
  await client.until(() => client.published.has(uri))
  await client.change(uri, 2, insert('te'))
  await client.until(() => rules(client.published.get(uri)!).includes('colon-missing'))
})

test.each([
  ['voc: 22.1 V', 'voc: 2.21 V', 'voc-below-vmp'],
  ['imp: 5.92 A', 'imp: 5.92 V', 'wrong-dimension'],
  ['construction: flexible', 'construction: flexibel', 'not-a-choice'],
])('an error of value does not wait: %s typed as %s', async (right, wrong, rule) => {
  client = await startServer({ capabilities: full })
  await client.open(uri, tern.replace(right, ''))
  await client.change(uri, 2, [{ text: tern.replace(right, wrong) }])
  expect(rules(await client.pull(uri))).toContain(rule)
})

test('a file that was broken before somebody typed elsewhere goes on being reported', async () => {
  client = await startServer()
  await client.open(uri, `te\n${tern}`)
  expect(rules(await client.pull(uri))).toContain('colon-missing')
  await client.change(uri, 2, insert('we', { line: 11, character: 0 }))
  expect(rules(await client.pull(uri))).toContain('colon-missing')
})

test('an empty file has an error with the form as its fix, and none while its first lines are typed', async () => {
  client = await startServer()
  const empty = 'file:///nowhere/new.panel.yaml'
  await client.open(empty, '')
  const [error, ...others] = await client.pull(empty)
  expect([error!.severity, error!.message, others]).toEqual([
    1,
    'The panel record is empty; wattproof new panel begins one.',
    [],
  ])
  const actions = await client.request<{ title: string }[]>('textDocument/codeAction', {
    textDocument: { uri: empty },
    range: error!.range,
    context: { diagnostics: [error] },
  })
  expect(actions.map(({ title }) => title)).toContain('Insert the form of a panel record')
  const typed = await typist(client, empty)
  for (const key of '# typed by hand\n# from the sheet\nform') expect(serious((await typed.key(key)).found)).toEqual([])
})

test('lines that are made comments in a form and taken out again leave it as it was', async () => {
  client = await startServer()
  const form = 'file:///nowhere/form.panel.yaml'
  const lines = skeleton(schemas.panel!).split('\n')
  // as an editor toggles a line: "# " after the indent
  const toggled = lines.map((line) =>
    line.trim() === ''
      ? line
      : line.replace(/^( *)(?:# )?/, (all, indent: string) => (all.includes('#') ? indent : `${indent}# `)),
  )
  const again = toggled.map((line) =>
    line.trim() === ''
      ? line
      : line.replace(/^( *)(?:# )?/, (all, indent: string) => (all.includes('#') ? indent : `${indent}# `)),
  )
  expect(again).toEqual(lines)
  await client.open(form, lines.join('\n'))
  const before = serious(await client.pull(form))
  // the lines of one group, uncommented together
  const at = lines.findIndex((line) => /^ *# *noct:/.test(line))
  expect(at).toBeGreaterThan(0)
  const end = lines.findIndex((line, i) => i > at && !/^ *# {2,}\S|^ +# /.test(line))
  const open = lines.map((line, i) => (at <= i && i < end ? line.replace(/^( *)# /, '$1') : line)).join('\n')
  await client.change(form, 2, [{ text: open }])
  await client.notify('textDocument/didSave', { textDocument: { uri: form } })
  expect(serious(await client.pull(form))).toEqual(before)
})
