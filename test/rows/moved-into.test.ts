import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { applyEdits } from '../../server/src/text/span.ts'

/** A record with the fix of the unknown field at a pointer applied; null where none is offered. */
function moved(text: string, pointer: string, settings = ''): string | null {
  const library = createLibrary()
  library.put('/a.panel.yaml', text)
  library.put('/wattproof.yaml', `format: 1\n${settings}`)
  const { tree, findings } = checkFile(library, '/a.panel.yaml', { today: '2026-10-05' })!
  const found = findings.find((one) => one.pointer === pointer && one.rule === 'unknown-field')
  const fix = found?.corrections[0]
  return fix ? applyEdits(tree.text, fix.edits) : null
}

test('a whole record of another shape', () => {
  const typed = `format: 1
panel:
  model: Tern 110
  pmax_w: 110
  vmp_v: 18.6
  imp_a: 5.92
  voc_v: 22.1
  isc_a: 6.31
  length_mm: 1190
  width_mm: 540
  weight_kg: 2.2
`
  expect(moved(typed, '/panel')).toBe(`format: 1
name: Tern 110
stc:
  pmax: 110 W
  vmp: 18.6 V
  imp: 5.92 A
  voc: 22.1 V
  isc: 6.31 A
size:
  length: 1190 mm
  width: 540 mm
weight: 2.2 kg
`)
})

const around = (own: string, stc = 'stc: { pmax: 110 W, vmp: 18.6 V, imp: 5.92 A, isc: 6.31 A }') =>
  `format: 1\nname: Tern 110\n${stc}\n${own}size: { length: 1190 mm, width: 540 mm }\n`

test('into a group that is there, and nothing else changes', () => {
  expect(moved(around('electrical: { voc_v: 22.1 }  # from the list\n'), '/electrical')).toBeNull()
  expect(moved(around('electrical: { voc_v: 22.1 }\n'), '/electrical')).toBe(
    around('', 'stc: { pmax: 110 W, vmp: 18.6 V, imp: 5.92 A, isc: 6.31 A, voc: 22.1 V }'),
  )
  const lines = 'stc:\r\n  pmax: 110 W\r\n  vmp: 18.6 V\r\n  imp: 5.92 A\r\n  isc: 6.31 A'
  expect(moved(around('electrical: { voc_v: 22.1 }\r\n', lines), '/electrical')).toBe(
    around('', `${lines}\r\n  voc: 22.1 V`),
  )
})

test('by the names that the library explains', () => {
  expect(moved(around('u0: 22.1\n'), '/u0')).toBeNull()
  expect(moved(around('u0: 22.1\n'), '/u0', 'columns: { u0: stc.voc V }\n')).toContain('voc: 22.1 V }')
})

test.each([
  ['a value without a field', 'electrical: { voc_v: 22.1, shelf: 3 }\n', '/electrical'],
  ['a field that is there', 'electrical: { vmp_v: 18 }\n', '/electrical'],
  ['one field twice', 'electrical: { voc_v: 22.1, voc: 22.1 V }\n', '/electrical'],
  ['a comment that would be lost', 'electrical:\n  # measured\n  voc_v: 22.1\n', '/electrical'],
  ['a value that the field does not take', 'electrical: { voc: 22.1 kg }\n', '/electrical'],
])('%s: nothing is offered', (_, own, pointer) => expect(moved(around(own), pointer)).toBeNull())
