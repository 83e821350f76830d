import { describe, expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'

const head = 'format: 1\nname: Tern\nconstruction: rigid\n'

function found(text: string) {
  const library = createLibrary()
  library.put('a.panel.yaml', text)
  return checkFile(library, 'a.panel.yaml', { today: '2026-11-25' })!.findings
}

describe('notations of sheets that stand for a field of the whole panel', () => {
  test.each([
    ['-2.1 mV/K per cell', '-75.6 mV/K'],
    ['-2.1 mV/°C/cell', '-75.6 mV/°C'],
    ['-0.0021 V/K per cell', '-0.0756 V/K'],
  ])('%s', (typed, text) => {
    const record = `${head}temperature_coefficients: { voc: ${typed} }\ncells: { in_series: 36 }\n`
    expect(found(record)).toContainEqual(
      expect.objectContaining({
        pointer: '/temperature_coefficients/voc',
        rule: 'other-word',
        corrections: [expect.objectContaining({ text })],
      }),
    )
  })

  test('not where the cells are not known', () => {
    const record = `${head}temperature_coefficients: { voc: -2.1 mV/K per cell }\n`
    expect(found(record)).toContainEqual(expect.objectContaining({ rule: 'unknown-unit', corrections: [] }))
  })

  test.each([
    '1190 x 540 x 2.5 mm',
    '1190 × 540 × 2.5 mm (46.9 × 21.3 × 0.1 in)',
    '1190 mm x 540 mm x 2.5 mm / 46.9 in',
  ])('three sides on one line: %s', (size) => {
    const text = '{ length: 1190 mm, width: 540 mm, thickness: 2.5 mm }'
    expect(found(`${head}size: ${size}\n`)).toContainEqual(
      expect.objectContaining({ pointer: '/size', corrections: [expect.objectContaining({ text })] }),
    )
  })

  test('the slash of a fraction begins no other unit', () => {
    const text = '{ length: 46 7/8 in, width: 21 1/4 in }'
    expect(found(`${head}size: 46 7/8 x 21 1/4 in\n`)).toContainEqual(
      expect.objectContaining({ pointer: '/size', corrections: [expect.objectContaining({ text })] }),
    )
  })
})
