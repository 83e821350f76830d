import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { Diagnostic } from 'vscode-languageserver-protocol'
import { afterEach, expect, test } from 'vitest'
import { slip } from '../workbench/cases/records.ts'
import { full, startServer, type Client } from './client.ts'

let client: Client
afterEach(() => client.stop())

const uri = 'file:///records/slip.panel.yaml'
const capabilities = {
  ...full,
  textDocument: { ...full.textDocument, publishDiagnostics: { codeDescriptionSupport: true } },
}

/** What is said of a slip. */
async function found(options: Parameters<typeof startServer>[0], text = slip): Promise<readonly Diagnostic[]> {
  client = await startServer(options)
  await client.open(uri, text)
  return client.pull(uri)
}

test('a finding leads to the page of its rule in the package, where the client shows that', async () => {
  const [finding] = (await found({ capabilities })).filter(({ code }) => code === 'voc-below-vmp')
  const page = new URL(finding!.codeDescription!.href)
  expect(page.hash).toBe('#voc-below-vmp')
  expect(readFileSync(fileURLToPath(page), 'utf8')).toContain('\n### voc-below-vmp\n')
})

test('or to the page that the client names', async () => {
  const initializationOptions = { rulePage: 'https://records.example/{rule}.html' }
  const [finding] = (await found({ capabilities, initializationOptions })).filter(
    ({ code }) => code === 'voc-below-vmp',
  )
  expect(finding!.codeDescription).toEqual({ href: 'https://records.example/voc-below-vmp.html' })
})

test('a client that shows none gets none', async () => {
  const all = await found({ capabilities: full })
  expect(all.length).toBeGreaterThan(0)
  expect(all.filter(({ codeDescription }) => codeDescription)).toEqual([])
})

test('the README names every initialization option, and no other', async () => {
  const source = readFileSync('server/src/editor/protocol.ts', 'utf8')
  const options = /interface InitializationOptions \{([^]*?)\n\}/.exec(source)![1]!
  const table = /^\| initialization option [^]*?\n\n/m.exec(readFileSync('README.md', 'utf8'))![0]
  const named = [...table.matchAll(/^\| (`.*?) \|/gm)].flatMap(([, cell]) => [...cell!.matchAll(/`(\w+)`/g)])
  expect(named.map(([, name]) => name).sort()).toEqual(
    [...options.matchAll(/readonly (\w+)\?/g)].map(([, name]) => name).sort(),
  )
  expect(await found({ capabilities: full })).not.toEqual([])
})

test('a setting of another kind is named in the log, once, and the default is used', async () => {
  client = await startServer({ settings: { codeLens: 'no', hints: { units: 1, derived: false } } })
  await client.open(uri, slip)
  const range = { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } }
  const ask = (method: string) => client.request(method, { textDocument: { uri }, range })
  expect(await ask('textDocument/inlayHint')).toMatchObject([{ label: ' kg' }]) // units are shown, derived values are not
  await ask('textDocument/codeLens')
  await client.until(() => client.log.length >= 2)
  expect(client.log.filter((line) => line.startsWith('The setting'))).toEqual([
    'The setting wattproof.hints.units is 1: true or false is expected, and true is used.',
    'The setting wattproof.codeLens is "no": true or false is expected, and true is used.',
  ])
})
