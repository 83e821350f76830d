import { describe, expect, test } from 'vitest'
import type { ClientCapabilities, CodeLens, DocumentSymbol, Range } from 'vscode-languageserver'
import { clientOf } from '../../server/src/editor/client.ts'
import { codeLenses } from '../../server/src/editor/handlers/code-lens.ts'
import { documentLinks } from '../../server/src/editor/handlers/links.ts'
import { definition, highlights, references } from '../../server/src/editor/handlers/references.ts'
import { prepareRename, rename, renamedFiles } from '../../server/src/editor/handlers/rename.ts'
import { documentSymbols, workspaceSymbols } from '../../server/src/editor/handlers/symbols.ts'
import type { TextDocumentEdit } from 'vscode-languageserver'
import { tern } from './client.ts'
import { applied, clients, hereAt } from './here.ts'

const boat = `format: 1
name: Boat
arrays:
  - panels: [{ panel: tern-110, count: 4 }, { panel: auk, count: 1 }]
  - panels: [{ panel: "tern-110", count: 2 }]
`
const others = { 'panels/tern-110.panel.yaml': tern, 'auk.panel.yaml': tern, 'van.system.yaml': boat }
const system = { name: 'boat.system.yaml', others }
const record = { name: 'panels/tern-110.panel.yaml', others: { 'boat.system.yaml': boat, 'van.system.yaml': boat } }
const shown = ({ start, end }: Range) => `${start.line}:${start.character}-${end.character}`

describe('definition', () => {
  const check = (fixture: string, client = clients.full) => {
    const { here, offset } = hereAt(fixture, { ...system, client })
    return definition(here, offset)
  }

  test('of an id: the record, at its name', () => {
    expect(check(boat.replace('tern-110', 'te$0rn-110'))).toMatchObject([
      {
        targetUri: 'file:///library/panels/tern-110.panel.yaml',
        targetSelectionRange: { start: { line: 1, character: 6 } },
        originSelectionRange: { start: { line: 3, character: 22 }, end: { line: 3, character: 30 } },
      },
    ])
  })

  test('a plain location for a client without links', () => {
    expect(check(boat.replace('auk', 'a$0uk'), clients.bare)).toEqual([
      {
        uri: 'file:///library/auk.panel.yaml',
        range: { start: { line: 1, character: 6 }, end: { line: 1, character: 14 } },
      },
    ])
  })

  test('nothing elsewhere', () => expect(check(boat.replace('Boat', 'Bo$0at'))).toEqual([]))
})

test('references of a record from its name, and from an id', () => {
  const fromRecord = hereAt(tern.replace('Tern', 'Te$0rn'), record)
  const uses = references(fromRecord.here, fromRecord.offset, false)
  expect(uses.map(({ uri, range }) => `${uri.slice(16)} ${shown(range)}`)).toEqual([
    'boat.system.yaml 3:22-30',
    'boat.system.yaml 4:22-32',
    'van.system.yaml 3:22-30',
    'van.system.yaml 4:22-32',
  ])
  const fromSystem = hereAt(boat.replace('auk', 'a$0uk'), system)
  expect(references(fromSystem.here, fromSystem.offset, true).map(({ uri }) => uri.slice(16))).toEqual([
    'auk.panel.yaml',
    'boat.system.yaml',
    'van.system.yaml',
  ])
})

test('the same id in the file is lit up', () => {
  const { here, offset } = hereAt(boat.replace('tern-110', 'te$0rn-110'), system)
  expect(highlights(here, offset).map(({ range }) => shown(range))).toEqual(['3:22-30', '4:22-32'])
})

describe('rename', () => {
  const at = (fixture: string, options: Parameters<typeof hereAt>[1] = system) => {
    const { here, offset } = hereAt(fixture, options)
    return { here, offset }
  }

  test('an id: every place that names it, then the file', () => {
    const { here, offset } = at(boat.replace('tern-110', 'te$0rn-110'))
    expect(prepareRename(here, offset)).toMatchObject({
      placeholder: 'tern-110',
      range: { start: { line: 3, character: 22 } },
    })
    const { documentChanges } = rename(here, offset, 'tern 120')
    const move = documentChanges!.at(-1)
    expect(move).toMatchObject({
      kind: 'rename',
      oldUri: 'file:///library/panels/tern-110.panel.yaml',
      newUri: 'file:///library/panels/tern%20120.panel.yaml',
    })
    const texts = (documentChanges!.slice(0, -1) as TextDocumentEdit[]).map(({ edits }) =>
      applied(boat, edits as never),
    )
    expect(texts).toEqual([boat.replaceAll('tern-110', 'tern 120'), boat.replaceAll('tern-110', 'tern 120')])
  })

  test('a climate: the settings that name it too', () => {
    const settings = 'format: 1\nsite: { climate: bay }\n'
    const options = { name: 'bay.climate.yaml', others: { 'wattproof.yaml': settings } }
    const { here, offset } = at('format: 1\nname: B$0ay\n', options)
    const [edit] = rename(here, offset, 'cove').documentChanges as TextDocumentEdit[]
    expect(applied(settings, edit!.edits as never)).toBe(settings.replace('bay', 'cove'))
  })

  test('from the name in the record itself', () => {
    const { here, offset } = at(tern.replace('Tern', 'Te$0rn'), record)
    expect(rename(here, offset, 'gull').documentChanges).toHaveLength(3)
  })

  test.each([
    { id: 'a/b', why: 'is not allowed in one' },
    { id: '', why: 'at least one character' },
    { id: 'auk', why: 'There is a panel auk already' },
    { id: '.hidden', why: 'is not allowed in one' },
  ])('`$id` is refused', ({ id, why }) => {
    const { here, offset } = at(boat.replace('tern-110', 'te$0rn-110'))
    expect(() => rename(here, offset, id)).toThrow(why)
  })

  test('what cannot be renamed is said before a name is typed', () => {
    const refused = (fixture: string, client = clients.full) => {
      const { here, offset } = hereAt(fixture, { ...system, client })
      return () => prepareRename(here, offset)
    }
    expect(refused(boat.replace('count', 'co$0unt'))).toThrow('Only the id of a record')
    expect(refused(boat.replaceAll('auk', 'albatross').replace('albatross', 'al$0batross'))).toThrow(
      'There is no record albatross',
    )
    expect(refused(boat.replace('auk', 'a$0uk'), clients.bare)).toThrow('cannot rename files')
  })

  test('an editor that says only that it renames files gets the same edits', () => {
    const capabilities: ClientCapabilities = { workspace: { workspaceEdit: { resourceOperations: ['rename'] } } }
    const client = clientOf({ processId: null, rootUri: null, capabilities }, null)
    const { here, offset } = hereAt(boat.replace('auk', 'a$0uk'), { ...system, client })
    expect(rename(here, offset, 'gull').documentChanges).toMatchObject([{}, {}, { kind: 'rename' }])
  })

  test('a file renamed by hand takes the places along that name it', () => {
    const { workspace } = hereAt(boat, system)
    const root = 'file:///library/'
    const moved = [{ from: `${root}auk.panel.yaml`, to: `${root}razorbill.panel.yaml` }]
    const edit = renamedFiles(workspace, moved, (path) => path, clients.full)!
    expect((edit.documentChanges as TextDocumentEdit[]).map(({ edits }) => applied(boat, edits as never))[0]).toBe(
      boat.replace('auk', 'razorbill'),
    )
    expect(
      renamedFiles(
        workspace,
        [{ from: `${root}auk.panel.yaml`, to: `${root}old/auk.panel.yaml` }],
        (path) => path,
        clients.full,
      ),
    ).toBeNull()
  })
})

const usesIn = (lenses: readonly CodeLens[]) => lenses.filter(({ command }) => command?.title.startsWith('used in'))

describe('code lens', () => {
  test('in how many systems a record is used', () => {
    const { here } = hereAt(tern, record)
    expect(usesIn(codeLenses(here))).toMatchObject([
      { command: { title: 'used in 2 systems', command: '' }, range: { start: { line: 1 } } },
    ])
  })

  test('with the places where the client can show them', () => {
    const client = { ...clients.full, options: { showReferences: 'wattproof.showReferences' } }
    const { here } = hereAt(tern, { ...record, client })
    const [lens] = codeLenses(here)
    expect(lens!.command!.command).toBe('wattproof.showReferences')
    expect(lens!.command!.arguments![2]).toHaveLength(4)
  })

  test('none above a system, nor above a record that no system uses', () => {
    expect(codeLenses(hereAt(boat, system).here)).toEqual([])
    expect(usesIn(codeLenses(hereAt(tern).here))).toEqual([])
  })
})

describe('symbols', () => {
  test('the outline of a record', () => {
    const symbols = documentSymbols(hereAt(tern).here) as DocumentSymbol[]
    expect(symbols.map(({ name }) => name)).toEqual(['format', 'name', 'construction', 'stc', 'size'])
    expect(symbols[3]!.children!.map(({ name, detail }) => `${name} ${detail}`)).toContain('voc 22.1 V')
  })

  test('a flat list for a client without a tree', () => {
    const symbols = documentSymbols(hereAt(tern, { client: clients.bare }).here)
    expect(symbols).toHaveLength(12)
    expect(symbols[4]).toMatchObject({ name: 'pmax', containerName: 'stc' })
  })

  test('records by name or id, in any case', () => {
    const { workspace } = hereAt(boat, system)
    const found = (query: string) => workspaceSymbols(workspace, query, (path) => path).map(({ name }) => name)
    expect(found('AUK')).toEqual(['Tern 110 (auk)'])
    expect(found('')).toHaveLength(4)
    expect(found('zz')).toEqual([])
  })
})

describe('the datasheet', () => {
  const check = (source: string) =>
    documentLinks(hereAt(`${tern}datasheet: ${source}\n`, { name: 'panels/tern.panel.yaml' }).here).map(
      ({ target }) => target,
    )

  test.each([
    {
      source: '{ source: sheets/tern 110.pdf, page: 2 }',
      target: 'file:///library/panels/sheets/tern%20110.pdf#page=2',
    },
    { source: '{ source: ../sheets/tern.pdf }', target: 'file:///library/sheets/tern.pdf' },
    { source: '{ source: https://example.com/tern.pdf, page: 3 }', target: 'https://example.com/tern.pdf#page=3' },
  ])('$source', ({ source, target }) => expect(check(source)).toEqual([target]))

  test.each([
    'by letter',
    'javascript:alert(1).pdf',
    '/etc/secret.pdf',
    '../../../etc/secret.pdf',
    'sheets/../../../secret.pdf',
    'file:////host/share.pdf',
    '"\\\\\\\\host\\\\share.pdf"',
    '//host/share.pdf',
  ])('no link: %s', (source) => expect(check(`{ source: ${source} }`)).toEqual([]))

  test('no link out of the library that settings mark', () => {
    const others = { 'panels/wattproof.yaml': 'format: 1\n' }
    const links = (source: string) =>
      documentLinks(
        hereAt(`${tern}datasheet: { source: ${source} }\n`, { name: 'panels/deep/a.panel.yaml', others }).here,
      )
    expect(links('../tern.pdf')).toHaveLength(1)
    expect(links('../../tern.pdf')).toHaveLength(0)
  })
})
