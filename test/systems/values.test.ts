import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { folder, libraryOf } from './library.ts'

test('values of a system are the figures of its review, each at a field that stands in the file', () => {
  const library = libraryOf()
  const path = `${folder}/boat.system.yaml`
  const { fields, review, values } = checkFile(library, path, { today: '2026-11-25' })!
  const { figures } = review!
  const all = new Map(values().map((value) => [value.id, value]))
  expect(all.get('arrays/0/voc_cold')).toMatchObject({ value: figures.arrays[0]!.voc_cold_v, text: '52.9 V' })
  expect(all.get('arrays/1/isc_design')?.value).toBe(figures.arrays[1]!.isc_design_a)
  expect(all.get('battery/usable')?.value).toBe(figures.battery.usable_wh)
  const { months } = figures
  expect(all.get('year/yield')?.formula).toContain(
    `by month, in Wh a day: January ${months[0]!.yield_wh_day.toFixed(0)}, February `,
  )
  expect(all.get('year/lowest_soc')?.value).toBe(Math.min(...months.map((m) => m.lowest_soc!)))
  expect(all.get('year/unmet_load')?.value).toBe(0)
  expect(all.size).toBe(2 * 9 + 3 + 3)
  for (const { pointer } of all.values()) expect(fields.has(pointer) || pointer === '/loads').toBe(true)
})
