import { expect, test } from 'vitest'
import type { TextEdit } from 'vscode-languageserver'
import { completion } from '../../server/src/editor/handlers/completion.ts'
import { applied, clients, hereAt } from './here.ts'

type Options = Parameters<typeof hereAt>[1]

function itemsAt(fixture: string, options?: Options) {
  const { here, offset, source } = hereAt(fixture, options)
  return { items: completion(here, offset).sort((a, b) => (a.sortText! < b.sortText! ? -1 : 1)), source }
}

const labels = (fixture: string, options?: Options) => itemsAt(fixture, options).items.map(({ label }) => label)

test.each([
  {
    name: 'tern.panel.yaml',
    before: '$0',
    after:
      'format: 1\nname: $1\nstc:\n  pmax: $2 W\n  vmp: $3 V\n  imp: $4 A\n  voc: $5 V\n  isc: $6 A\nsize:\n  length: $7 mm\n  width: $8 mm',
  },
  {
    name: 'van.system.yaml',
    before: 'arrays:\n  - $0\n',
    after:
      'arrays:\n  - id: $1\n    panels:\n      - panel: $2\n        count: $3\n    wiring:\n      in_series: $4\n      in_parallel: $5\n',
  },
])('all required fields at once, last in the list: $name', ({ name, before, after }) => {
  const { items, source } = itemsAt(before, { name })
  const item = items.find(({ label }) => label === 'required fields')!
  expect(items.at(-1)).toBe(item)
  const { range, newText } = item.textEdit as TextEdit
  // an editor begins each line as the first one begins
  const margin = /^ */.exec(source.split('\n')[range.start.line]!)![0]
  expect(applied(source, [{ range, newText: newText.replaceAll('\n', `\n${margin}`) }])).toBe(after)
})

test('not where one is left, in braces, or for an editor without stops', () => {
  const found = [
    labels('format: 1\nname: a\nsize: { length: 1 m, width: 1 m }\n$0'),
    labels('stc: { $0 }\n'),
    labels('$0', { client: clients.bare }),
  ]
  for (const list of found) expect(list).not.toContain('required fields')
})
