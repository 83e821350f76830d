import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { samples } from './samples.ts'
import { yamlServer } from './yaml-server.ts'

test.each([
  ['panel', 'samples/library/panels/tern-110.panel.yaml', 'voc: 22.1', 'open-circuit voltage', 'A bare number is in V.'],
  ['panel', 'samples/library/panels/tern-110.panel.yaml', '22.1 V', 'open-circuit voltage', 'nothing connected'],
  ['panel', 'samples/library/panels/tern-110.panel.yaml', 'construction:', 'construction', 'flexible (a thin laminate'],
  ['panel', 'samples/library/panels/tern-110.panel.yaml', 'quoted_on:', 'quoted on', 'When the price was quoted.'],
  ['system', 'samples/systems/van.system.yaml', 'controller:', 'controller', 'Id of a controller record, or its fields.'],
])('a general YAML server names the field of a %s: %s at %s', async (kind, path, piece, title, says) => {
  const server = await yamlServer(kind, readFileSync(path, 'utf8'))
  const hover = (await server.hover(piece))?.replaceAll('\\', '')
  server.stop()
  expect(hover).toMatch(new RegExp(`^#### ${title}\n`))
  expect(hover).toContain(says)
})

test.each(['panel', 'controller', 'battery', 'climate', 'system', 'library'])(
  'a general YAML server has nothing against a %s',
  async (kind) => {
    const [sample] = samples.filter((one) => one.kind === kind)
    const server = await yamlServer(kind, readFileSync(sample?.path ?? '', 'utf8'))
    expect(await server.diagnostics()).toEqual([])
    server.stop()
  },
)
