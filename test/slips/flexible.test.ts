// Invented flexible panels, laid out in a way that nothing was chosen by, are in order: with the efficiency of the outline, with that
// of the cells, and with none. What is typed wrong in them is found.
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { flexibles } from './flexible.ts'
import { printed, yamlOf, type Row } from './rows.ts'

const rows = flexibles(300, 4711, 'laid out')
const ofCells = (row: Row) =>
  Math.min(Number(row['efficiency_of_cells_pct']), (0.15 * Number(row['pmax_w'])) / Number(row['area_m2']))

function serious(text: string) {
  const library = createLibrary()
  library.put('it.panel.yaml', text)
  const { findings } = checkFile(library, 'it.panel.yaml', { today: '2026-09-01' })!
  return findings.filter(({ severity }) => severity === 'error' || severity === 'warning')
}

test.each<[printing: string, efficiency: (row: Row) => number | null | undefined, most: number]>([
  ['no efficiency', () => null, 0.01],
  ['the efficiency of the outline', () => undefined, 0.01],
  ['the efficiency of the cells', ofCells, 0.015],
])('with %s printed they are quiet', (_, efficiency, most) => {
  const alarms = rows.filter((row) => {
    const percent = efficiency(row)
    const one: Row = percent === undefined ? row : { ...row, efficiency_pct: percent }
    return serious(yamlOf(one, printed(one))).length > 0
  })
  expect(rows.length).toBe(300)
  expect(alarms.length / rows.length).toBeLessThanOrEqual(most)
})

test.each([
  [30, 'error'],
  [200, 'error'],
])('a printed efficiency of %s %% is no habit of sheets', (percent, severity) => {
  const row: Row = { ...rows.find(({ sort }) => sort === 'mono')!, efficiency_pct: percent }
  const found = serious(yamlOf(row, printed(row)))
  expect(found.map((one) => one.pointer)).toContain('/stc/efficiency')
  expect(found.map((one) => one.severity)).toContain(severity)
})

test('pounds typed as kilograms are seen in nine of ten', () => {
  const some = rows.slice(0, 100)
  const seen = some.filter((row) => {
    const pounds = (Number(row['weight_kg']) / 0.45359237).toFixed(1)
    return serious(yamlOf(row, { ...printed(row), '/weight': `${pounds} kg` })).some(
      ({ pointer }) => pointer === '/weight',
    )
  })
  expect(seen.length).toBeGreaterThanOrEqual(90)
})
