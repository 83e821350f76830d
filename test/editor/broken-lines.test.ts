import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { CodeAction, Diagnostic, Hover } from 'vscode-languageserver-protocol'
import { fileURLToPath } from 'node:url'
import { random } from '../../server/src/physics/random.ts'
import { wattproof } from '../terminal/run.ts'
import { folderOf, startServer, type Client } from './client.ts'

const sample = readFileSync('samples/library/panels/coot-150.panel.yaml', 'utf8')
const typed = sample.split('\n').filter((line) => !line.startsWith('datasheet'))

/** What a slip makes of a line of a record. */
const slips: readonly ((line: string) => string)[] = [
  (line) => line.replace(': ', ' '),
  (line) => ` ${line}`,
  (line) => `\t${line.trim()}`,
  (line) => line.replace(/[}\]]/, ''),
  (line) => line.replace(', ', ' '),
  (line) => line.replace(/: (\S)/, ': "$1'),
  (line) => `${line}\n${line}`,
  (line) => `<<<<<<< HEAD\n${line}\n=======\n>>>>>>> other`,
  (line) => `${line.slice(0, 7)}\n${line.slice(7)}`,
  (line) => `*${line}`,
]

/** Each slip in a line of its own text. */
const texts = slips.map((slip, i) => {
  const at = 3 + Math.floor(random(17 * i + 5).value * (typed.length - 6))
  return { name: `p${i}.panel.yaml`, at, text: typed.map((line, j) => (j === at ? slip(line) : line)).join('\n') }
})

const folder = folderOf(Object.fromEntries(texts.map(({ name, text }) => [name, text])))
let client: Client
beforeAll(async () => void (client = await startServer({ folders: [folder.uri] })))
afterAll(async () => {
  await client.stop()
  folder.dispose()
})

interface Reported {
  readonly path: string
  readonly findings: readonly (Pick<Diagnostic, 'message' | 'range'> & { readonly rule: string })[]
}
const shown = (found: readonly Pick<Diagnostic, 'message' | 'range' | 'code'>[]) =>
  found
    .map(
      ({ code, message, range: { start, end } }) =>
        `${code} ${start.line}:${start.character}-${end.line}:${end.character} ${message}`,
    )
    .sort()

describe('what is broken is seen in the editor as on the command line', () => {
  const run = wattproof(['check', '--format', 'json'], { cwd: fileURLToPath(folder.uri) })
  const { files } = JSON.parse(run.out) as { files: readonly Reported[] }

  test.each(texts)('$name', async ({ name, at, text }) => {
    const uri = folder.uriOf(name)
    await client.open(uri, text)
    const found = await client.pull(uri)
    const { findings } = files.find(({ path }) => path === name)!
    expect(shown(found)).toEqual(shown(findings.map(({ rule, ...one }) => ({ ...one, code: rule }))))

    // two lines above the slip, where nothing is wrong
    const line = text
      .split('\n')
      .slice(0, at - 1)
      .findLastIndex((one) => /^ +[a-z]+: \d/.test(one))
    if (line >= 0) {
      const [, value = ''] = /: (\S+)/.exec(text.split('\n')[line]!)!
      const position = { line, character: text.split('\n')[line]!.indexOf(value) }
      const hover = await client.request<Hover | null>('textDocument/hover', { textDocument: { uri }, position })
      expect(JSON.stringify(hover)).toContain(value)
    }

    for (const one of found) {
      const actions = await client.request<CodeAction[]>('textDocument/codeAction', {
        textDocument: { uri },
        range: one.range,
        context: { diagnostics: [one] },
      })
      for (const { edit, diagnostics } of actions.filter(({ title }) => !/ccept/.test(title))) {
        if (!edit || !diagnostics?.length) continue
        const edits = edit.documentChanges!.flatMap((change) => ('edits' in change ? change.edits : []))
        const sorted = [...edits].sort(
          (a, b) => b.range.start.line - a.range.start.line || b.range.start.character - a.range.start.character,
        )
        await client.close(uri)
        await client.open(uri, text)
        // one after the other, from the end, as an editor does
        await client.change(
          uri,
          2,
          sorted.map((change) => ({ range: change.range, text: 'newText' in change ? change.newText : '' })),
        )
        await client.notify('textDocument/didSave', { textDocument: { uri } })
        const left = await client.pull(uri)
        const same = (all: readonly Diagnostic[]) =>
          all.filter(({ code, message }) => code === one.code && message === one.message).length
        expect(same(left)).toBeLessThan(same(found))
      }
    }
    await client.close(uri)
  })
})
