import { expect, test } from 'vitest'
import { isPerCell, ofPanel } from '../../server/src/quantities/per-cell.ts'

// a panel's coefficient is that of a cell times the cells in series: 36 x -2.1 mV/K = -75.6 mV/K
test.each([
  ['-2.1 mV/K per cell', 36, '-75.6 mV/K'],
  ['−2.1 mV/K per cell', 36, '-75.6 mV/K'],
  ['-2.1 mV/°C/cell', 60, '-126 mV/°C'],
  ['-0.0021 V/K per Cell', 72, '-0.1512 V/K'],
])('%s with %i cells in series is %s of the panel', (text, cells, panel) => {
  expect(ofPanel(text, cells)).toBe(panel)
})

test.each<[string, unknown]>([
  ['-2.1 mV/K', 36],
  ['-0.29 %/°C per cell', 36],
  ['per cell', 36],
  ['-2.1 mV/K per cell', 0],
  ['-2.1 mV/K per cell', -36],
  ['-2.1 mV/K per cell', '36'],
  ['-2.1 mV/K per cell', undefined],
  ['a lot mV/K per cell', 36],
])('%s with %j cells is none', (text, cells) => {
  expect(ofPanel(text, cells)).toBeNull()
})

test.each([
  ['-2.1 mV/K per cell', true],
  ['-2.1 mV/K/cell', true],
  ['-2.1 mV/K per cells in series', false],
  ['-2.1 mV/K', false],
])('%s is per cell: %s', (text, expected) => {
  expect(isPerCell(text)).toBe(expected)
})
