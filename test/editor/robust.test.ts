import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, expect, test } from 'vitest'
import { startServer, tern, type Client } from './client.ts'

const uri = 'file:///nowhere/half.panel.yaml'
const mistakes = 'samples/mistakes'
const samples = readdirSync(mistakes).filter((name) => name.endsWith('.panel.yaml'))
const longest = samples
  .map((name) => readFileSync(join(mistakes, name), 'utf8'))
  .sort((a, b) => b.length - a.length)[0]!

let client: Client
afterEach(() => client.stop())

/** Everything that an editor may ask about a place. Fails when an answer is an error or the server complains. */
async function askAll(text: string, offset: number, version: number) {
  await client.change(uri, version, [{ text }])
  const lines = text.slice(0, offset).split(/\r\n|\r|\n/)
  const position = { line: lines.length - 1, character: lines.at(-1)!.length }
  const textDocument = { uri }
  const range = { start: { line: 0, character: 0 }, end: position }
  const context = { diagnostics: [], includeDeclaration: true }
  await Promise.all([
    client.pull(uri),
    ...['hover', 'completion', 'definition', 'references', 'documentHighlight'].map((what) =>
      client.request(`textDocument/${what}`, { textDocument, position, context }),
    ),
    ...['documentSymbol', 'documentLink', 'codeLens'].map((what) =>
      client.request(`textDocument/${what}`, { textDocument }),
    ),
    client.request('textDocument/inlayHint', { textDocument, range }),
    client.request('textDocument/codeAction', { textDocument, range, context }),
    client.request('textDocument/codeAction', {
      textDocument,
      range,
      context: { diagnostics: [], only: ['source.fixAll'] },
    }),
    client.request('textDocument/prepareRename', { textDocument, position }).catch((error: Error) => {
      expect(error.message).toMatch(/^(?:Only the id|There is no record)/)
    }),
  ])
  expect(client.log).toEqual([])
}

test.each([
  { name: 'as typed', text: longest },
  { name: 'CRLF', text: longest.replaceAll('\n', '\r\n') },
  { name: 'tabs', text: longest.replaceAll('\n  ', '\n\t') },
  { name: 'a byte order mark', text: `\uFEFF${tern}` },
])(
  'every request on every beginning of a file: $name',
  async ({ text }) => {
    client = await startServer()
    await client.open(uri, '')
    let version = 1
    for (let end = 0; end <= text.length; end += 31) await askAll(text.slice(0, end), end, ++version)
  },
  60_000,
)

test.each([
  { name: 'nothing', text: '' },
  { name: 'conflict markers', text: tern.replace('stc:', '<<<<<<< ours\nstc:\n=======\nstc:\n>>>>>>> theirs') },
  { name: 'a file that is too long', text: `${tern}notes: ${'x'.repeat(300_000)}\n` },
  { name: 'aliases upon aliases', text: 'a: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\nd: [*c, *c]\n' },
  { name: 'brackets without end', text: '{'.repeat(500) },
  { name: 'two records', text: `${tern}---\n${tern}` },
  { name: 'lone surrogates', text: `${tern}notes: \ud800\n` },
])('every request on $name', async ({ text }) => {
  client = await startServer()
  await client.open(uri, '')
  await askAll(text, 0, 2)
  await askAll(text, Math.min(text.length, 60), 3)
  await askAll(text, text.length, 4)
})

test('a place beyond the end of the file', async () => {
  client = await startServer()
  await client.open(uri, tern)
  const position = { line: 999, character: 999 }
  expect(await client.request('textDocument/hover', { textDocument: { uri }, position })).toBeNull()
  expect(client.log).toEqual([])
})
