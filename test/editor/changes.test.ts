import { cpSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterEach, expect, test } from 'vitest'
import type { TextEdit } from 'vscode-languageserver'
import { TextDocument } from 'vscode-languageserver-textdocument'
import type { ChangesResult, PutPanelResult } from '../../server/src/editor/protocol-changes.ts'
import { scratch, wattproof } from '../terminal/run.ts'
import { startServer, type Client } from './client.ts'

let client: Client
afterEach(() => client.stop())

/** A server in a copy of the sample systems. */
async function started() {
  const folder = scratch({})
  cpSync('samples/systems', folder, { recursive: true })
  client = await startServer({ folders: [pathToFileURL(folder).href] })
  const uri = (path: string) => pathToFileURL(join(folder, path)).href
  return { folder, uri, text: (path: string) => readFileSync(join(folder, path), 'utf8') }
}

const panel = 'panels/puffin-115.panel.yaml'
const boat = 'boat.system.yaml'

test('what a change did: new findings and derived values, in the record and in the systems that name it', async () => {
  const { uri, text } = await started()
  const was = text(panel)
  const voc = /voc: ([\d.]+) V/.exec(was)![1]!
  await client.open(uri(panel), was.replace(`voc: ${voc} V`, `voc: ${voc.replace('.', '')} V`))
  const page = await client.request<ChangesResult>('wattproof/changes', {
    since: 'the last commit',
    before: [{ uri: uri(panel), text: was }],
  })
  const parts = page!.text.replaceAll('\\', '').split('\n## ')
  const of = (path: string) => parts.find((part) => part.startsWith(`${path}\n`)) ?? ''
  expect(parts[0]).toBe('# Changes since the last commit\n')
  expect(of(panel)).toMatch(/New findings:\n\n- \*\*error\*\*, line \d+: Voc .+ \([a-z-]+\)\n/)
  expect(of(panel)).toMatch(/\| value \| before \| now \| change \|\n/)
  expect(of(boat)).toMatch(/- \*\*error\*\*, line 24: .+ exceeds the controller's 100 V.+ \(string-voltage-high\)/)
  expect(of(boat)).toMatch(/\| Voc of the string on the coldest morning \(.+\) \| 52\.9 V \| \d+ V \| \+\d+\.\d % \|/)
  const names = parts.slice(1).map((part) => part.split('\n', 1)[0])
  expect(names[0]).toBe(panel) // what changed, then what depends on it
  expect(names.slice(1)).toEqual(names.slice(1).sort())
  expect(names).not.toContain('van.system.yaml') // it names another panel
})

test('nothing is shown where nothing changed, and what was found before is not new', async () => {
  const { uri, text } = await started()
  const ask = (before: readonly { uri: string; text: string | null }[]) =>
    client.request<ChangesResult>('wattproof/changes', { since: 'main', before })
  expect(await ask([])).toBeNull()
  expect(await ask([{ uri: uri(panel), text: text(panel) }])).toBeNull()
  const commented = `# a comment above\n${text(panel)}`
  await client.open(uri(panel), commented)
  expect(await ask([{ uri: uri(panel), text: text(panel) }])).toBeNull()
  const added = await ask([{ uri: uri(panel), text: null }])
  expect(added!.text).toMatch(/\| peak power[^|]* \| - \| |\| efficiency[^|]* \| - \| /)
})

test('a panel is put on a surface as the command line writes it, a question at a time', async () => {
  const { folder, uri, text } = await started()
  const put = (chosen: object) =>
    client.request<PutPanelResult>('wattproof/putPanel', { textDocument: { uri: uri(boat) }, ...chosen })
  expect(await put({})).toMatchObject({ choose: 'surface', from: [{ id: 'bimini' }, { id: 'coachroof' }] })
  const panels = (await put({ surface: 'coachroof' })) as Extract<PutPanelResult, { choose: string }>
  expect(panels.choose).toBe('panel')
  const [best] = panels.from
  expect(best!.figures).toMatch(/^\d+ panels, \d+ W rated, \d+ W when hot, \d+ kWh a year, /)
  const done = (await put({ surface: 'coachroof', panel: best!.id })) as Extract<PutPanelResult, { done: string }>
  const before = text(boat)
  const after = TextDocument.applyEdits(
    TextDocument.create(uri(boat), 'yaml', 0, before),
    done.edits as unknown as TextEdit[],
  )
  const { out } = wattproof(['compare', boat, '--surface', 'coachroof', '--write', best!.id], { cwd: folder })
  expect(text(boat)).toBe(after)
  expect(after).not.toBe(before)
  expect(out).toBe(`${boat}: ${done.done}\n`)
  expect(done.done).not.toContain('has errors')
  expect(await put({ surface: 'deck' })).toEqual({ problem: expect.stringContaining('no surface `deck`') })
})

test('a panel on the front with errors in its record is said to have them, when it is offered and when it is put', async () => {
  const { uri, text } = await started()
  const slipped = text('panels/skua-110.panel.yaml').replace('pmax: 110 W', 'pmax: 410 W')
  await client.open(uri('panels/skua-110.panel.yaml'), slipped)
  const put = (chosen: object) =>
    client.request<PutPanelResult>('wattproof/putPanel', {
      textDocument: { uri: uri(boat) },
      surface: 'bimini',
      ...chosen,
    })
  const said = 'skua-110 has errors; correct them before you choose it.'
  const { from } = (await put({})) as Extract<PutPanelResult, { choose: string }>
  expect(from.find(({ id }) => id === 'skua-110')!.note).toContain(said)
  expect(from.find(({ id }) => id === 'puffin-115')!.note).not.toContain('errors')
  const done = (await put({ panel: 'skua-110' })) as Extract<PutPanelResult, { done: string }>
  expect(done.done).toMatch(/ x skua-110 on bimini, .*\. skua-110 has errors/)
})
