import { expect, test } from 'vitest'
import { startServer } from '../editor/client.ts'
import { yamlServer } from './yaml-server.ts'

const split = `format: 1
name: Tern 110
stc: { pmax: 110 W, vmp: 18.6 V, imp: 5.92 A, voc: 22.1 V, isc: 6.31 A }
temperature_coefficients:
  pmax: - 0.38 %/°C
size: { length: 1190 mm, width: 540 mm }
`

/** What our server reports at the line of the minus, beside a server that reports syntax or not. */
async function ours(syntaxElsewhere: boolean): Promise<readonly string[]> {
  const server = await startServer({ capabilities: {}, initializationOptions: { syntaxElsewhere } })
  const uri = 'file:///records/any.panel.yaml'
  await server.open(uri, split)
  await server.until(() => server.published.has(uri))
  await server.stop()
  return server.published.get(uri)!.filter(({ range, severity }) => range.start.line === 4 && severity! <= 2).map(({ code }) => String(code))
}

// figures of the README, "Beside a general YAML server"
test('a split minus is reported once by us, and by a general YAML server as often as the README says', async () => {
  const general = await yamlServer('panel', split)
  const theirs = await general.diagnostics()
  general.stop()
  expect(theirs).toEqual([
    'Unexpected block-seq-ind on same line with key',
    'Implicit map keys need to be followed by map values',
    'Incorrect type. Expected "string | number".',
  ])
  expect(await ours(false)).toEqual(['minus-apart'])
  expect(await ours(true)).toEqual(['minus-apart'])
})
