import { expect, test } from 'vitest'
import type { CodeAction, TextDocumentEdit } from 'vscode-languageserver'
import { codeActions } from '../../server/src/editor/handlers/code-actions.ts'
import { codeLenses } from '../../server/src/editor/handlers/code-lens.ts'
import { schemas } from '../../server/src/records/schemas.generated.ts'
import { skeleton } from '../../server/src/records/skeleton.ts'
import { tern } from './client.ts'
import { applied, clients, hereAt } from './here.ts'

function actions(fixture: string, client = clients.full) {
  const { here, offset, source } = hereAt(fixture, { client })
  return { all: codeActions(here, { start: offset, end: offset }, []), source }
}

function after({ edit }: CodeAction, source: string): string {
  const edits = edit?.changes
    ? Object.values(edit.changes).flat()
    : (edit!.documentChanges as TextDocumentEdit[]).flatMap((one) => one.edits)
  return applied(
    source,
    edits.map((one) =>
      'snippet' in one ? { range: one.range, newText: one.snippet.value.replaceAll('\\}', '}') } : one,
    ),
  )
}

test('what a line lacks is added by an action, in the order of the schema, with the cursor before its unit', () => {
  const { all, source } = actions(tern.replace('pmax:', 'pm$0ax:'))
  const add = all.find(({ title }) => title.startsWith('Add noct'))!
  expect(after(add, source)).toBe(tern.replace('size:', 'noct: { temperature: $1 °C }\nsize:'))
})

test('a field of a group that is there goes into it', () => {
  const record = tern.replace('size:', 'limits: { series_fuse: 15 A }\nsize:')
  const { all, source } = actions(record.replace('voc:', 'v$0oc:'), clients.bare)
  const add = all.find(({ title }) => title === 'Add limits system_voltage')!
  expect(after(add, source)).toBe(record.replace('15 A }', '15 A, system_voltage:  V }'))
})

test('on the line of the name there is one for everything, and a line above says what is not given', () => {
  const { here, offset } = hereAt(tern.replace('name:', 'na$0me:'))
  const titles = codeActions(here, { start: offset, end: offset }, []).map(({ title }) => title)
  expect(titles).toEqual(
    expect.arrayContaining([
      'Add noct temperature',
      'Add weight',
      'Add temperature_coefficients voc',
      'Add cells in_series',
    ]),
  )
  expect(codeLenses(here).map(({ command }) => command!.title)).toEqual([
    expect.stringMatching(/^not given: [a-z_ ]+, [a-z_ ]+, [a-z_ ]+, [a-z_ ]+ and \d more$/),
  ])
})

test('an empty file is offered its form', () => {
  const { all, source } = actions('$0')
  expect(
    after(
      all.find(({ title }) => title === 'Insert the form of a panel record')!,
      source,
    ),
  ).toBe(skeleton(schemas.panel!))
})

test('decimal commas, words, cases and no-break spaces of a file go in one step, from any of them', () => {
  const typed = tern
    .replace('voc: 22.1', 'Voc: 22,1')
    .replace('flexible', 'Flexible')
    .replace('5.92 A', '5,92 A')
    .replace('6.31 A', '6.31\u00A0A')
    .replace('110 W', '110 w')
  const { all, source } = actions(typed.replace('Flexible', 'Flexi$0ble'))
  const fix = all.find(({ title }) => title.startsWith('Fix all'))!
  expect(fix.title).toBe('Fix all 6 spellings in this file')
  expect(after(fix, source)).toBe(tern)
})
