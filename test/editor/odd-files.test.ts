import { spawnSync } from 'node:child_process'
import { symlinkSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { afterEach, expect, test } from 'vitest'
import { bare, folderOf, full, startServer, tern, type Client } from './client.ts'

let client: Client
afterEach(() => client.stop())

test.each([
  'file://host/x.panel.yaml',
  'file:///a%2Fb.panel.yaml',
  'file:///100%.panel.yaml',
  'file:///%ff.panel.yaml',
  'file:x.panel.yaml',
  'file:///nul%00.panel.yaml',
  'vscode-remote://ssh+host/x.panel.yaml',
  'untitled:x.panel.yaml',
])('%s can be opened, changed and closed, and the server goes on', async (uri) => {
  for (const capabilities of [full, bare]) {
    client = await startServer({ capabilities })
    await client.open(uri, tern)
    await client.change(uri, 2, [{ text: `${tern}notes: x\n` }])
    await client.close(uri)
    const other = 'file:///nowhere/tern.panel.yaml'
    await client.open(other, tern)
    const symbols = await client.request<unknown[]>('textDocument/documentSymbol', { textDocument: { uri: other } })
    expect(symbols.length).toBeGreaterThan(0)
    if (capabilities === full) await client.stop()
  }
})

test.runIf(process.platform !== 'win32')(
  'what is no record is a finding there, and the others have theirs',
  async () => {
    const folder = folderOf({ 'bad.panel.yaml': tern.replace('22.1 V', '2.21 V'), 'real/far.panel.yaml': tern })
    const path = (name: string) => fileURLToPath(folder.uriOf(name))
    symlinkSync('/dev/zero', path('zero.panel.yaml'))
    spawnSync('mkfifo', [path('pipe.panel.yaml')])
    symlinkSync('loop.panel.yaml', path('loop.panel.yaml'))
    symlinkSync('real', path('folder.panel.yaml'))
    symlinkSync('real/far.panel.yaml', path('near.panel.yaml'))
    folder.write('large.panel.yaml', 'x'.repeat(2 << 20))
    client = await startServer({ folders: [folder.uri] })
    const { items } = await client.request<{ items: { uri: string; items: { code: string; message: string }[] }[] }>(
      'workspace/diagnostic',
      { previousResultIds: [] },
    )
    const reported = Object.fromEntries(items.map((one) => [one.uri.slice(folder.uri.length + 1), one.items]))
    const unread = Object.entries(reported).flatMap(([name, [first]]) =>
      first?.code === 'file-not-read' ? [`${name}: ${first.message}`] : [],
    )
    expect(unread.sort()).toEqual([
      'folder.panel.yaml: This file was not read: it is a folder, not a record.',
      'large.panel.yaml: This file was not read: it has 2.0 MiB, and a record has a few KiB.',
      'loop.panel.yaml: This file was not read: its links lead in a circle.',
      'pipe.panel.yaml: This file was not read: it is no regular file.',
      'zero.panel.yaml: This file was not read: it is a link that leads out of its library.',
    ])
    expect(reported['bad.panel.yaml']!.map(({ code }) => code)).toContain('voc-below-vmp')
    expect(reported['near.panel.yaml']).toBeDefined()
    expect(client.log).toEqual([])
    folder.dispose()
  },
)
