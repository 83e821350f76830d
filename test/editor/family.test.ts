import type { Diagnostic } from 'vscode-languageserver'
import { afterEach, expect, test } from 'vitest'
import { bare, folderOf, full, startServer, type Client } from './client.ts'

/** A power class of an invented family. */
const record = (pmax: number, imp: number, isc: number, noct: number) => `format: 1
name: Tern ${pmax}
construction: rigid
cells: { technology: mono, in_series: 36 }
stc: { pmax: ${pmax} W, vmp: 18.6 V, imp: ${imp} A, voc: 22.1 V, isc: ${isc} A }
temperature_coefficients: { pmax: -0.38 %/°C, voc: -0.29 %/°C, isc: 0.05 %/°C }
noct: { temperature: ${noct} °C }
size: { length: 1190 mm, width: 540 mm }
`
const files = {
  'tern-105.panel.yaml': record(105, 5.65, 6.02, 46),
  'tern-110.panel.yaml': record(110, 5.92, 6.31, 56),
  'tern-115.panel.yaml': record(115, 6.18, 6.6, 46),
}
const serious = (found: readonly Diagnostic[]) =>
  found.filter(({ severity }) => (severity ?? 4) <= 2).map(({ message }) => String(message))

let client: Client
let folder: ReturnType<typeof folderOf>
afterEach(async () => {
  await client.stop()
  folder.dispose()
})

test('a value that breaks with the siblings is reported with their names, until they read the same', async () => {
  folder = folderOf(files)
  client = await startServer({ capabilities: full, folders: [folder.uri] })
  const own = folder.uriOf('tern-110.panel.yaml')
  await client.open(own, files['tern-110.panel.yaml'])
  expect(serious(await client.pull(own))).toEqual([
    'NOCT 56 °C is probably 46 °C, as in Tern 105 and Tern 115 (neighbouring key hit): it disagrees with the rest of the record.',
  ])

  client.asked.length = 0
  for (const name of ['tern-105.panel.yaml', 'tern-115.panel.yaml'] as const) {
    await client.open(folder.uriOf(name), files[name])
    await client.change(folder.uriOf(name), 2, [{ text: files[name].replace('46 °C', '56 °C') }])
  }
  const isAsked = () => client.asked.some(({ method }) => method === 'workspace/diagnostic/refresh')
  while (serious(await client.pull(own)).length > 0) {
    await client.until(isAsked)
    client.asked.length = 0
  }
})

test('so it is for an editor that is pushed to', async () => {
  folder = folderOf(files)
  client = await startServer({ capabilities: bare, folders: [folder.uri] })
  const own = folder.uriOf('tern-110.panel.yaml')
  await client.open(own, files['tern-110.panel.yaml'])
  await client.until(() => serious(client.published.get(own) ?? []).some((message) => message.includes('Tern 115')))
  await client.open(folder.uriOf('tern-105.panel.yaml'), files['tern-105.panel.yaml'])
  await client.change(folder.uriOf('tern-105.panel.yaml'), 2, [
    { text: files['tern-105.panel.yaml'].replace('46 °C', '56 °C') },
  ])
  await client.until(() => !serious(client.published.get(own) ?? []).some((message) => message.includes('Tern 105')))
})
