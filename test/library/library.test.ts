import { readFileSync, readdirSync } from 'node:fs'
import { expect, test } from 'vitest'
import { createLibrary } from '../../server/src/library/create.ts'

const settings = (currency: string) => `format: 1\ncurrency: ${currency}\n`
const panel = (name: string) => `format: 1\nname: ${name}\nprice: { amount: 100 }\n`

/** Two libraries, one inside the other, and a record that belongs to neither. */
function nested() {
  const library = createLibrary()
  library.put('a/wattproof.yaml', settings('USD'))
  library.put('a/tern.panel.yaml', panel('outer'))
  library.put('a/deep/er/heron.panel.yaml', panel('deep'))
  library.put('a/b/wattproof.yaml', settings('EUR'))
  library.put('a/b/panels/tern.panel.yaml', panel('inner'))
  library.put('a-b/tern.panel.yaml', panel('outside'))
  return library
}

test.each([
  ['a/tern.panel.yaml', 'a/wattproof.yaml'],
  ['a/deep/er/heron.panel.yaml', 'a/wattproof.yaml'],
  ['a/b/panels/tern.panel.yaml', 'a/b/wattproof.yaml'],
  ['a/b/wattproof.yaml', 'a/b/wattproof.yaml'],
  ['a/new.system.yaml', 'a/wattproof.yaml'],
  ['a-b/tern.panel.yaml', undefined],
])('%s is governed by the nearest settings, %s', (path, own) => expect(nested().settings(path)?.path).toBe(own))

test.each([
  ['a/x.system.yaml', ['a/tern.panel.yaml']],
  ['a/b/x.system.yaml', ['a/b/panels/tern.panel.yaml']],
  ['x.system.yaml', ['a-b/tern.panel.yaml']],
])('an id means the record of its own library: near %s', (near, paths) => {
  expect(
    nested()
      .byId('panel', 'tern', near)
      .map(({ path }) => path),
  ).toEqual(paths)
  expect(nested().byId('battery', 'tern', near)).toEqual([])
})

test('records of a kind come in path order, of one library', () => {
  expect(
    nested()
      .ofKind('panel', 'a/x')
      .map(({ path }) => path),
  ).toEqual(['a/deep/er/heron.panel.yaml', 'a/tern.panel.yaml'])
  expect(nested().paths()).toEqual([
    'a-b/tern.panel.yaml',
    'a/b/panels/tern.panel.yaml',
    'a/b/wattproof.yaml',
    'a/deep/er/heron.panel.yaml',
    'a/tern.panel.yaml',
    'a/wattproof.yaml',
  ])
})

test('addresses and paths of other systems', () => {
  const library = createLibrary()
  library.put('c:\\lib\\wattproof.yaml', settings('USD'))
  library.put('c:\\lib\\panels\\tern.panel.yaml', panel('x'))
  expect(library.settings('c:\\lib\\panels\\tern.panel.yaml')?.path).toBe('c:\\lib\\wattproof.yaml')
})

test('settings arrive, change and go: prices are read again', () => {
  const library = createLibrary()
  const path = 'a/tern.panel.yaml'
  const unit = () =>
    (library.byId('panel', 'tern', path)[0] ?? library.ofKind('panel', path)[0])?.record.price.amount?.quantity.unit
  library.put(path, panel('x'))
  expect(unit()).toBeUndefined()
  library.put('a/wattproof.yaml', settings('USD'))
  expect(unit()).toBe('USD')
  library.put('a/wattproof.yaml', settings('EUR'))
  expect(unit()).toBe('EUR')
  library.drop('a/wattproof.yaml')
  expect(unit()).toBeUndefined()
})

test('notes of panels are made again after a change of the settings, or of a climate that they name', () => {
  const library = nested()
  library.put('a/wattproof.yaml', `${settings('USD')}site: { climate: bay }\n`)
  let made = 0
  const note = () => ++made
  const noted = () => library.noted('a/tern.panel.yaml', note)
  expect([noted(), noted()]).toEqual([1, 1])
  library.put('a/bay.climate.yaml', 'format: 1\nname: Bay\n')
  expect(noted()).toBe(2)
  library.put('a/fjord.climate.yaml', 'format: 1\nname: Fjord\n')
  expect(noted()).toBe(2)
  library.drop('a/bay.climate.yaml')
  expect(noted()).toBe(3)
  library.put('a/wattproof.yaml', settings('EUR'))
  expect(noted()).toBe(4)
  library.forgetNotes()
  expect(noted()).toBe(5)
})

test('what is to be noted of each panel is noted when one is read', () => {
  const library = nested()
  const made: string[] = []
  library.note(({ path }) => made.push(path))
  library.file('a/tern.panel.yaml')
  library.gather('a/b/panels/tern.panel.yaml')
  expect(made).toEqual(['a/tern.panel.yaml', 'a/b/panels/tern.panel.yaml'])
})

test('what is put last wins; what is dropped is gone; the version changes with both', () => {
  const library = createLibrary()
  const name = () => (library.file('tern.panel.yaml')?.record as { name?: { text: string } } | undefined)?.name?.text
  expect(library.version).toBe(0)
  library.put('tern.panel.yaml', panel('disk'))
  expect([name(), library.version]).toEqual(['disk', 1])
  library.put('tern.panel.yaml', panel('buffer'))
  expect([name(), library.version]).toEqual(['buffer', 2])
  library.put('tern.panel.yaml', panel('buffer'))
  expect(library.version).toBe(2)
  library.put('readme.md', '# none of ours')
  library.drop('never.panel.yaml')
  expect(library.version).toBe(2)
  library.drop('tern.panel.yaml')
  expect([name(), library.version, library.paths()]).toEqual([undefined, 3, []])
})

test('a file is read once, when it is asked for, and again only after it changed', () => {
  const library = createLibrary()
  library.put('tern.panel.yaml', panel('x'))
  library.put('heron.panel.yaml', panel('y'))
  const [tern, heron] = [library.file('tern.panel.yaml'), library.file('heron.panel.yaml')]
  expect(library.file('tern.panel.yaml')).toBe(tern)
  library.put('tern.panel.yaml', panel('z'))
  expect(library.file('tern.panel.yaml')).not.toBe(tern)
  expect(library.file('heron.panel.yaml')).toBe(heron)
})

test('two records of one id are both found', () => {
  const library = createLibrary()
  for (const path of ['b/tern.panel.yaml', 'a/tern.panel.json', 'c/tern.panel.yml']) library.put(path, '{}')
  expect(library.byId('panel', 'tern', 'x').map(({ path }) => path)).toEqual([
    'a/tern.panel.json',
    'b/tern.panel.yaml',
    'c/tern.panel.yml',
  ])
})

test('what a system names, and where a record is named', () => {
  const library = createLibrary()
  for (const folder of ['', 'panels/', 'controllers/', 'batteries/', 'climates/'])
    for (const name of readdirSync(`samples/systems/${folder}`).filter((one) => /\.(yaml|json)$/.test(one)))
      library.put(`s/${folder}${name}`, readFileSync(`samples/systems/${folder}${name}`, 'utf8'))
  const boat = library.file('s/boat.system.yaml')!
  expect(library.references(boat).map(({ kind, field }) => `${kind} ${field.value}`)).toEqual([
    'climate example-bay',
    'panel puffin-115',
    'controller example-mppt-30',
    'panel puffin-115',
    'controller example-mppt-30',
    'battery example-lfp-100',
  ])
  const [puffin] = library.byId('panel', 'puffin-115', boat.path)
  const uses = () => library.usesOf(puffin!).map(({ file, field }) => `${file.path} ${field.pointer}`)
  expect(uses()).toEqual(['s/boat.system.yaml /arrays/0/panels/0/panel', 's/boat.system.yaml /arrays/1/panels/0/panel'])
  expect(library.references(puffin!)).toEqual([])
  library.put('s/other/wattproof.yaml', settings('USD'))
  library.put('s/other/copy.system.yaml', boat.tree.text)
  expect(uses().length).toBe(2)
  library.drop('s/boat.system.yaml')
  expect(uses()).toEqual([])
})

test('folders opened side by side keep their ids apart, unless settings above hold them together', () => {
  const library = nested()
  library.put('c/tern.panel.yaml', panel('one'))
  library.put('d/tern.panel.yaml', panel('other'))
  library.setFolders(['c/', 'd/', 'a/', 'a/deep/'])
  const found = (near: string) => library.byId('panel', 'tern', near).map(({ path }) => path)
  expect(found('c/x.system.yaml')).toEqual(['c/tern.panel.yaml'])
  expect(found('d/x.system.yaml')).toEqual(['d/tern.panel.yaml'])
  expect(found('a/deep/x.system.yaml')).toEqual(['a/tern.panel.yaml'])
  expect(found('x.system.yaml')).toEqual(['a-b/tern.panel.yaml'])
})
