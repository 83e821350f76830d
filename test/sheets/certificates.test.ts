import { expect, test } from 'vitest'
import { certificateFor, certificatesIn } from '../../server/src/sheets/certificates.ts'

const piece = (text: string) => ({ text, x: 40, y: 100, width: 200, right: 240, size: 9, font: 'f', page: 1 })
const readings = certificatesIn([[piece('Certified to IEC 61215:2021 · IEC 61730-1 · UL 61730'), piece('IEC 61701')]])

test('the standards that a sheet names', () => {
  expect(readings.map(({ typed }) => typed)).toEqual(['IEC 61215', 'IEC 61730-1', 'UL 61730', 'IEC 61701'])
})

test.each([
  ['IEC 61215', ['IEC 61215'], 'IEC 61215', true],
  ['iec61215', ['iec61215'], 'IEC 61215', true],
  ['IEC 61251', ['IEC 61251'], 'IEC 61215', false],
  ['IEC 61251', ['IEC 61251', 'IEC 61215'], undefined, undefined],
  ['IEC 62716', ['IEC 62716'], undefined, undefined],
  ['salt mist', ['salt mist'], undefined, undefined],
])('%s, typed among %j, is %s', (typed, all, standard, isSame) => {
  const found = certificateFor(typed, all, readings)
  expect(found?.reading.typed).toBe(standard)
  expect(found?.isSame).toBe(isSame)
})
