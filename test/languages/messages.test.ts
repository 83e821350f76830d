import { readFileSync, readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { kinds, unitNames } from '../../server/src/quantities/kinds.ts'
import type { FieldInfo } from '../../server/src/records/field-info.ts'
import { schemas } from '../../server/src/records/schemas.generated.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { languageOf } from '../../server/src/wording/bundle.ts'

const tern = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8')
const boat = 'format: 1\nname: Boat\nkind: boat\narrays: [{ id: roof }]\n'
const read = (path: string) => JSON.parse(readFileSync(path, 'utf8')) as Record<string, string>
const messages = read('server/messages.json')
/** Where names of values and of kinds stand as plain texts. */
const sources = ['server/src', 'schemas/source']
  .flatMap((root) => readdirSync(root, { recursive: true }).map((name) => `${root}/${String(name)}`))
  .filter((path) => /\.(ts|json)$/.test(path))
  .map((path) => readFileSync(path, 'utf8'))
  .join('\n')
const holes = (template: string) => [...template.matchAll(/\{\w+\}/g)].map(([hole]) => hole).sort()

describe.each(['de', 'es'])('%s', (language) => {
  const bundle = read(`server/l10n/bundle.l10n.${language}.json`)
  const english = new Set(Object.values(messages))

  test('every template has a translation', () => {
    expect([...english].filter((template) => !Object.hasOwn(bundle, template))).toEqual([])
  })

  test('every field has a name and a description, every choice its meaning', () => {
    const texts = new Set(Object.values(schemas).flatMap((root) => textsOf(root)))
    expect([...texts].filter((text) => !Object.hasOwn(bundle, text))).toEqual([])
  })

  test('every kind of quantity and every derived value has a name, a source and what it is worth', () => {
    const names = [
      ...Object.values(kinds).map(({ name }) => name),
      ...Object.values(unitNames),
      ...derivedOf('tern-110.panel.yaml', tern),
      ...['canvas', 'standoff', 'bonded'].flatMap((mounting) => derivedOf('tern-110.panel.yaml', tern, mounting)),
      ...derivedOf('boat.system.yaml', boat),
    ]
    expect(names.filter((name) => !Object.hasOwn(bundle, name))).toEqual([])
  })

  test('every page of a rule has its headings and its prose', () => {
    expect(proseOfRules().filter((text) => !Object.hasOwn(bundle, text))).toEqual([])
  })

  test('no translation is left over', () => {
    const fields = Object.values(schemas).flatMap((root) => textsOf(root))
    const used = new Set([...Object.keys(messages), ...english, ...fields, ...proseOfRules()])
    const left = Object.keys(bundle).filter((text) => !used.has(text) && !sources.includes(text))
    expect(left).toEqual([])
  })

  test('what goes into a sentence goes into its translation', () => {
    const unlike = Object.entries(bundle).filter(
      ([template, translation]) => holes(messages[template] ?? template).join() !== holes(translation).join(),
    )
    expect(unlike).toEqual([])
  })
})

/** Paragraphs and headings of the reference, without the examples and what the catalogue has. */
function proseOfRules(): readonly string[] {
  const pages = readFileSync('schemas/rules.md', 'utf8').replace(/<!--[^]*?-->|```[^]*?```/g, '')
  const paragraphs = pages.split(/\n{2,}/).map((text) => text.trim().replaceAll('\n', ' '))
  return paragraphs
    .filter((text) => text !== '' && !/^(?:Severity:|Source:|#{1,3} )/.test(text))
    .map((text) => text.replace(/^#### /, ''))
}

/** What people read of a field and of all inside it. */
function textsOf({ title, symbol, description, choices, fields, item }: FieldInfo): string[] {
  const own = [title, symbol, description, ...(choices ?? []).map((one) => one.description)]
  return [...own.flatMap((text) => text || []), ...[...(fields ?? []), ...(item ? [item] : [])].flatMap(textsOf)]
}

function derivedOf(path: string, text: string, mounting = 'open rack'): string[] {
  const library = createLibrary()
  library.put('wattproof.yaml', `format: 1\nsite: { mounting: ${mounting} }\n`)
  library.put(path, text)
  const values = checkFile(library, path, { today: '2026-11-25' })!.values()
  expect(values.length).toBeGreaterThan(5)
  const worded = values.filter(({ id }) => !id.startsWith('energy_'))
  return worded.flatMap(({ label, source, uncertainty }) => [
    label,
    ...source.split(/; (?!from memory)/),
    ...(uncertainty === null ? [] : [uncertainty]),
  ])
}

test('a message, its reason and its correction are said in the language that is asked for', () => {
  const library = createLibrary()
  library.put('tern-110.panel.yaml', tern.replace('voc: 22.1 V', 'voc: 2.21 V'))
  const say = (language: string) => {
    const bundle = { texts: read(`server/l10n/bundle.l10n.${language}.json`), units: 'metric' } as const
    const { findings } = checkFile(library, 'tern-110.panel.yaml', { today: '2026-11-25', bundle })!
    return findings.map(({ message, reason, corrections }) => [message, reason, corrections[0]?.why])
  }
  expect(say('de')).toEqual([
    [
      'Voc 2.21 V ist wahrscheinlich 22.1 V (Dezimalpunkt verschoben): der Wert liegt unter Vmp 18.6 V.',
      expect.stringContaining('Leerlauf') as string,
      'Dezimalpunkt verschoben',
    ],
  ])
  expect(say('es')).toEqual([
    [
      'Voc 2.21 V es probablemente 22.1 V (punto decimal desplazado): está por debajo de Vmp 18.6 V.',
      expect.stringContaining('en vacío') as string,
      'punto decimal desplazado',
    ],
  ])
})

test.each([
  ['de', 'de'],
  ['de-AT', 'de'],
  ['es_MX.UTF-8', 'es'],
  ['ES', 'es'],
  ['en-GB', 'en'],
  ['fr', 'en'],
  ['', 'en'],
  [undefined, 'en'],
])('the language of locale %s is %s', (locale, language) => expect(languageOf(locale)).toBe(language))
