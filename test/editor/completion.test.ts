import { describe, expect, test } from 'vitest'
import { CompletionTriggerKind, type CompletionItem, type TextEdit } from 'vscode-languageserver'
import { completion, completionFor } from '../../server/src/editor/handlers/completion.ts'
import { readFile } from '../../server/src/records/read.ts'
import { tern } from './client.ts'
import { applied, clients, hereAt } from './here.ts'

type Options = Parameters<typeof hereAt>[1]

const itemsAt = (fixture: string, options?: Options) => {
  const { here, offset, source } = hereAt(fixture, options)
  return { items: completion(here, offset), source, path: here.path }
}

const labels = (fixture: string, options?: Options) =>
  itemsAt(fixture, options)
    .items.sort(bySortText)
    .map(({ label }) => label)
const bySortText = (a: CompletionItem, b: CompletionItem) => (a.sortText! < b.sortText! ? -1 : 1)

/** Chooses a proposal as an editor does, with `filled` typed at its first stop, and reads the file again. */
function check(
  fixture: string,
  label: string,
  after: string,
  { filled = '', ...options }: Options & { filled?: string } = {},
) {
  const { items, source, path } = itemsAt(fixture, options)
  const item = items.find((one) => one.label === label)!
  expect(item, `${label} among ${items.map((one) => one.label).join(', ')}`).toBeDefined()
  const edit = item.textEdit as TextEdit
  const text = item.insertTextFormat === 2 ? plain(edit.newText, filled) : edit.newText
  const now = applied(source, [{ ...edit, newText: text }])
  expect(now).toBe(after)
  expect(edit.range.start.line).toBe(edit.range.end.line)
  return readFile(path, now)!
}

const plain = (snippet: string, filled: string) =>
  snippet
    .replace(/\$\{1\|([^,|]*)[^}]*\}/, '$1')
    .replace('$1', filled)
    .replace(/\$\d/g, '')
    .replace(/\\([\\$},|])/g, '$1')

describe('what is typed whole matches no proposal from before, so that Enter ends the line however late an answer is', () => {
  test.each([
    { text: 'weight: 2 k$0\n', typed: ' kg' },
    { text: 'weight: 2$0\n', typed: 'kg' },
    { text: 'construction: fl$0\n', typed: 'flexible' },
  ])('$typed', ({ text, typed }) => {
    const { here, offset } = hereAt(`format: 1\n${text}`)
    const { items } = completionFor(here, offset, CompletionTriggerKind.TriggerForIncompleteCompletions) as {
      items: CompletionItem[]
    }
    const own = items.filter(({ label }) => label === typed.trim())
    expect(own).toHaveLength(1)
    expect(typed.startsWith(own[0]!.filterText!)).toBe(true)
    expect(own[0]!.filterText!.length).toBeLessThan(typed.length)
  })
})

describe('fields', () => {
  test('those of the group that are not there yet, required ones first, in the order of a datasheet', () => {
    expect(labels('format: 1\nstc:\n  pmax: 110 W\n  $0\n')).toEqual([
      'vmp',
      'imp',
      'voc',
      'isc',
      'tolerance',
      'efficiency',
      'required fields',
    ])
    expect(labels('$0').slice(0, 4)).toEqual(['format', 'name', 'stc', 'size'])
  })

  test.each([
    { why: 'half a word', before: 'stc:\n  vo$0\n', after: 'stc:\n  voc: 22.1 V\n' },
    { why: 'nothing', before: 'stc:\n  $0\n', after: 'stc:\n  voc: 22.1 V\n' },
    { why: 'above others', before: 'stc:\n  vo$0\n  isc: 6 A\n', after: 'stc:\n  voc: 22.1 V\n  isc: 6 A\n' },
    { why: 'in braces', before: 'stc: { pmax: 110 W, vo$0 }\n', after: 'stc: { pmax: 110 W, voc: 22.1 V }\n' },
    { why: 'in empty braces', before: 'stc: {$0}\n', after: 'stc: {voc: 22.1 V}\n' },
    { why: 'CRLF', before: 'stc:\r\n  vo$0\r\nweight: 2 kg\r\n', after: 'stc:\r\n  voc: 22.1 V\r\nweight: 2 kg\r\n' },
    { why: 'at the end of the file', before: 'stc:\n  vo$0', after: 'stc:\n  voc: 22.1 V' },
    { why: 'the colon is there', before: 'stc:\n  vo$0: 22.1 V\n', after: 'stc:\n  voc: 22.1 V\n' },
  ])('$why', ({ before, after }) => {
    const { fields } = check(before, 'voc', after, { filled: '22.1' })
    expect(fields.get('/stc/voc')?.value).toBe(22.1)
  })

  test('a choice, a list, a group, an item of a list', () => {
    check('constr$0', 'construction', 'construction: flexible')
    check('certi$0', 'certificates', 'certificates: [IEC 61215]', { filled: 'IEC 61215' })
    check('st$0', 'stc', 'stc:')
    check('warranty:\n  output:\n    - ye$0\n', 'years', 'warranty:\n  output:\n    - years: 5\n', { filled: '5' })
    expect(labels('warranty:\n  output: [{ years: 5, $0 }]\n')).toEqual(['at_least'])
  })

  test('JSON', () => {
    const before = '{\n  "format": 1,\n  "stc": { "pmax": "110 W", "vo$0" }\n}\n'
    const after = '{\n  "format": 1,\n  "stc": { "pmax": "110 W", "voc": "22.1 V" }\n}\n'
    const { fields } = check(before, 'voc', after, { filled: '22.1', name: 'tern.panel.json' })
    expect(fields.get('/stc/voc')?.value).toBe(22.1)
  })

  test('a client without snippets gets the key alone', () => {
    check('stc:\n  vo$0', 'voc', 'stc:\n  voc: ', { client: clients.bare })
  })

  test('no proposal puts in a number that nobody read', () => {
    for (const fixture of ['$0', 'stc:\n  $0', 'size: { $0 }']) {
      for (const { textEdit, label } of itemsAt(fixture).items) {
        const text = plain((textEdit as TextEdit).newText, '')
        if (label !== 'format') expect(text.replace('format: 1\n', '')).not.toMatch(/: .*\d(?!\/)(?:[^m]|$)/)
      }
    }
  })

  test('what a field is', () => {
    const item = itemsAt('stc:\n  $0').items.find(({ label }) => label === 'voc')!
    expect(item.detail).toBe('Voc, required')
    expect(item.documentation).toContain('Such as 22.1 V.')
  })
})

describe('values', () => {
  test('words with their meaning', () => {
    check('construction: fl$0\n', 'flexible', 'construction: flexible\n')
    check('construction: $0\n', 'rigid', 'construction: rigid\n')
    check('construction:$0\n', 'rigid', 'construction: rigid\n')
    check('construction: flexible$0  # as seen\n', 'rigid', 'construction: rigid  # as seen\n')
    check('cells: { technology: mo$0, in_series: 36 }\n', 'mono', 'cells: { technology: mono, in_series: 36 }\n')
    expect(itemsAt('construction: $0').items[0]!.documentation).toContain('a thin laminate')
  })

  test.each([
    { before: 'stc:\n  voc: 22.1 $0\n', after: 'stc:\n  voc: 22.1 V\n' },
    { before: 'stc:\n  voc: 22.1$0\n', after: 'stc:\n  voc: 22.1 V\n' },
    { before: 'stc: { voc: 22.1 $0, isc: 6 A }\n', after: 'stc: { voc: 22.1 V, isc: 6 A }\n' },
    { before: 'stc:\n  voc: 22.1 m$0V # typ\n', after: 'stc:\n  voc: 22.1 V # typ\n' },
    { before: 'stc:\n  voc: "22.1 $0"\n', after: 'stc:\n  voc: "22.1 V"\n' },
  ])('a unit behind the number: $before', ({ before, after }) => {
    const { fields } = check(before, 'V', after)
    expect(fields.get('/stc/voc')?.value).toBe(22.1)
  })

  test('no unit without a number, and no number of its own', () => {
    expect(labels('stc:\n  voc: $0')).toEqual([])
  })

  test('the currency of the library comes first', () => {
    expect(labels('price: { amount: 289 $0 }', { others: { 'wattproof.yaml': 'format: 1\ncurrency: NZD\n' } })[0]).toBe(
      'NZD',
    )
  })

  test('today, true, usual words of a list', () => {
    check('price: { quoted_on: $0 }', '2026-11-25', 'price: { quoted_on: 2026-11-25 }')
    check('bifacial: $0', 'true', 'bifacial: true')
    check('warranty: { exclusions: [uv, $0] }', 'salt water', 'warranty: { exclusions: [uv, salt water] }')
    check('warranty:\n  exclusions:\n    - fo$0\n', 'foot traffic', 'warranty:\n  exclusions:\n    - foot traffic\n')
  })

  test('ids of records, each with what distinguishes it from the others', () => {
    const options = { name: 'boat.system.yaml', others: { 'tern-110.panel.yaml': tern, 'auk.panel.yaml': tern } }
    const { items } = itemsAt('arrays:\n  - panels: [{ panel: t$0 }]\n', options)
    expect(items.map(({ label, detail }) => `${label}: ${detail}`)).toEqual([
      'auk: 110 W, flexible, 17.1 %',
      'tern-110: 110 W, flexible, 17.1 %',
    ])
    check(
      'arrays:\n  - panels: [{ panel: t$0 }]\n',
      'tern-110',
      'arrays:\n  - panels: [{ panel: tern-110 }]\n',
      options,
    )
  })

  test('surfaces of the system', () => {
    const system = (surface: string) =>
      `surfaces:\n  - { id: fore deck }\n  - { id: bimini }\narrays:\n  - panels: [{ panel: x, surface: ${surface} }]\n`
    expect(labels(system('$0'), { name: 'boat.system.yaml' })).toEqual(['fore deck', 'bimini'])
    check(system('f$0'), 'fore deck', system('fore deck'), { name: 'boat.system.yaml' })
  })

  test('climates for the settings', () => {
    const others = { 'example-bay.climate.yaml': 'format: 1\nname: Example Bay\nlatitude: 43.5 deg\n' }
    check('site: { climate: $0 }', 'example-bay', 'site: { climate: example-bay }', { name: 'wattproof.yaml', others })
  })
})

describe('while a person types', () => {
  // an editor asks anew, as if it was asked to, when the letter that drops its list is the last one
  test('a word that is typed whole is matched by no proposal, whoever asks', () => {
    const { here, offset } = hereAt('construction: flexible$0\n')
    for (const trigger of [CompletionTriggerKind.Invoked, CompletionTriggerKind.TriggerForIncompleteCompletions]) {
      const answer = completionFor(here, offset, trigger)
      const items = Array.isArray(answer) ? answer : answer.items
      expect(items.filter(({ filterText }) => filterText!.startsWith('flexible'))).toEqual([])
    }
  })

  const shown = (fixture: string, trigger: CompletionTriggerKind) => {
    const { here, offset } = hereAt(fixture)
    const answer = completionFor(here, offset, trigger)
    const items = Array.isArray(answer) ? answer : answer.items
    return items.filter(({ filterText }) => filterText !== '\u200B').map(({ label }) => label)
  }
  const { Invoked, TriggerCharacter, TriggerForIncompleteCompletions } = CompletionTriggerKind

  test('words come until one of them is there, so that Enter ends the line', () => {
    expect(shown('construction: $0\n', TriggerCharacter)).toEqual(['flexible', 'rigid', 'folding'])
    expect(shown('construction: flexibl$0\n', TriggerForIncompleteCompletions)).toContain('flexible')
    expect(shown('construction: flexible$0\n', TriggerForIncompleteCompletions)).toEqual([])
    expect(shown('construction: flexible$0\n', Invoked)).toContain('rigid')
  })

  test.each(['voc: 22.1 V$0', 'voc: 22.1V$0', '{ voc: 22.1 V$0 }', 'voc: "22.1 V$0"', 'isc: 6.31 mA$0'])(
    'a unit that is there is not proposed again: %s',
    (line) => expect(shown(`stc:\n  ${line}\n`, Invoked)).toEqual([]),
  )

  test('a blank behind a number brings nothing up, half a unit does', () => {
    expect(shown('stc:\n  voc: 22.1 $0\n', TriggerCharacter)).toEqual([])
    expect(shown('stc:\n  voc: 22.1 $0\n', Invoked)).toContain('V')
    expect(shown('stc:\n  voc: 22.1 m$0\n', Invoked)).toContain('mV')
  })

  test('fields', () => expect(shown('stc: { v$0 }\n', TriggerCharacter)).toContain('voc'))
})

describe('acceptances', () => {
  const slip = tern.replace('22.1 V', '2.21 V  # acc$0')

  test('in a comment, what was found on the line first', () => {
    expect(labels(slip)[0]).toBe('accept voc-below-vmp')
    check('stc:\n  voc: 2 V # accept voc$0', 'voc-below-vmp', 'stc:\n  voc: 2 V # accept voc-below-vmp: ')
  })

  test('a comment in other words is left alone', () => {
    expect(labels('name: Tern # as printed on the $0')).toEqual([])
  })

  test('rules as keys of the severities', () => {
    check('severities:\n  voc-b$0', 'voc-below-vmp', 'severities:\n  voc-below-vmp: error', { name: 'wattproof.yaml' })
  })
})
