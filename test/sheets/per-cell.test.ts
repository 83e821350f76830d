import { expect, test } from 'vitest'
import { readFile } from '../../server/src/records/read.ts'
import type { ReadFile } from '../../server/src/records/read-file.ts'
import { sheetOf } from '../../server/src/reader/read-bytes.ts'
import { draftOf } from '../../server/src/sheets/draft.ts'
import { hold } from '../../server/src/sheets/hold.ts'
import { ofLines } from './hostile/pdf.ts'

const lines = ['Pmax 100 W', 'Vmp 18.0 V', 'Imp 5.56 A', 'Voc 21.6 V', 'Isc 5.95 A']
const sheetWith = async (...more: string[]) => sheetOf(new Uint8Array(ofLines([...lines, ...more])))
const coefficient = 'Temperature coefficient of Voc: -2.1 mV/K per cell'

test.each([
  ['as printed', '-2.1 mV/K per cell', 'cells: { in_series: 36 }', 'same', null],
  ['of the panel', '-75.6 mV/K', 'cells: { in_series: 36 }', 'same', null],
  ['of another panel', '-64 mV/K', 'cells: { in_series: 36 }', 'other', '-2.1 mV/K per cell'],
  ['where the cells are not known', '-75.6 mV/K', '', 'not found', null],
])('a coefficient of a cell typed %s', async (_, voc, cells, status, text) => {
  const record = `format: 1\nstc: { voc: 21.6 V }\n${cells}\ntemperature_coefficients: { voc: ${voc} }\n`
  const { fields } = hold(readFile('a.panel.yaml', record) as ReadFile<'panel'>, await sheetWith(coefficient))
  const one = fields.find(({ field }) => field.pointer === '/temperature_coefficients/voc')
  expect(one).toMatchObject({ status, text })
})

test.each([
  ['with the number of cells', ['Number of cells: 36', coefficient], '-2.1 mV/K per cell'],
  ['in German', ['Anzahl Zellen: 36', 'Temperaturkoeffizient Voc: -2,1 mV/K je Zelle'], '-2.1 mV/K per cell'],
  [
    'in French',
    ['Nombre de cellules : 36', 'Coefficient de temperature Voc : -2.1 mV/K par cellule'],
    '-2.1 mV/K per cell',
  ],
  ['not without it', [coefficient], undefined],
  ['of the panel', ['Number of cells: 36', 'Temperature coefficient of Voc: -64 mV/K'], '-64 mV/K'],
  ['of the temperature of a cell', ['Voc temperature coefficient per cell temperature: -64 mV/K'], '-64 mV/K'],
])('a draft has what the sheet prints for a cell, %s', async (_, more, voc) => {
  const sheet = await sheetWith(...more)
  const draft = draftOf(sheet.models[0]!, { source: 'a.pdf', sha256: '', several: false, today: '2026-11-25' })
  const [, group] = /\ntemperature_coefficients:([\s\S]*?)\n\S/.exec(draft) ?? []
  expect(/^ +voc: (.*?) +#/m.exec(group ?? '')?.[1]).toBe(voc)
})
