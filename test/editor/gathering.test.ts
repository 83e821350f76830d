import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { createGathering } from '../../server/src/editor/gathering.ts'
import { createWorkspace } from '../../server/src/editor/workspace.ts'
import { folderOf, full, startServer } from './client.ts'

const typed = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8').replace(/\ndatasheet: .*/, '')
const record = (name: string) => typed.replace(/name: .*/, `name: ${name}`)
const names = Array.from({ length: 600 }, (_, i) => `tern-${i}.panel.yaml`)
const texts = Object.fromEntries(names.map((name, i) => [name, record(`Tern ${i}`)]))

/** A window with a bar, as the protocol library gives it, and a person who presses its button half way or not. */
function windowOf(isStopped: boolean) {
  const said: string[] = []
  let press = () => {}
  const bar = {
    begin: (title: string) => void said.push(title),
    report: (percent: number) => void (isStopped && 50 <= percent && press()),
    done: () => void said.push('done'),
    token: { onCancellationRequested: (stop: () => void) => void (press = stop) },
  }
  return { said, window: { createWorkDoneProgress: async () => bar } as never }
}

test.each([
  { what: 'all are known by their families in the end', isStopped: false },
  { what: 'a person may stop it', isStopped: true },
])('$what', async ({ isStopped }) => {
  const workspace = createWorkspace(() => '2026-01-01')
  for (const name of names) workspace.put(name, texts[name]!)
  const own = () => workspace.library.file('tern-300.panel.yaml') as never
  // nobody who asks for one record waits for six hundred
  expect(workspace.library.kinOf(own())).toEqual([])
  const { said, window } = windowOf(isStopped)
  let [read, again] = [0, 0]
  const gather = (path: string) => {
    read++
    workspace.library.gather(path)
  }
  const seen = { ...workspace, library: { ...workspace.library, gather } }
  const gathering = createGathering({ window }, {}, seen, () => again++)
  await gathering.add(names)
  await gathering.done()
  expect(read < names.length).toBe(isStopped)
  expect(workspace.library.kinOf(own()).length).toBeGreaterThan(8)
  expect([said, again]).toEqual([['Wattproof: reading records', 'done'], 1])
})

test('a record in a large library has its findings first, and those of its family once they are read', async () => {
  const folder = folderOf(texts)
  const client = await startServer({ capabilities: full, folders: [folder.uri] })
  const own = folder.uriOf('tern-300.panel.yaml')
  await client.open(own, texts['tern-300.panel.yaml']!)
  const copied = async () => (await client.pull(own)).filter(({ code }) => code === 'unedited-copy').length
  expect(await copied()).toBe(0)
  for (const until = Date.now() + 60_000; (await copied()) === 0 && Date.now() < until;)
    await new Promise((resolve) => setTimeout(resolve, 100))
  expect(await copied()).toBe(1)
  expect(client.log).toEqual([])
  await client.stop()
  folder.dispose()
})
