import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { folder, libraryOf } from './library.ts'

const path = `${folder}/measured/day-sailer.system.yaml`
const sample = readFileSync(path, 'utf8')

test.each([
  ['isc: 5.27 A', 'isc: 1e308'],
  ['isc: 5.11 A }', 'isc: 1e308 }'],
  ['isc: 5.11 A }', 'isc: 0 A }'],
  ['irradiance: 880 W/m2', 'irradiance: 0 W/m2'],
  ['irradiance: 880 W/m2', 'irradiance: 1e9 W/m2'],
  ['cell_temperature: 58 °C', 'cell_temperature: 5000 °C'],
  ['cell_temperature: 58 °C', 'cell_temperature: -300 °C'],
  ['voc: 33.4 V', 'voc: 0 V'],
  ['voc: 33.4 V', 'voc: -33.4 V'],
  ['string: 2, voc: 33.4 V', 'string: 1, voc: 33.4 V'],
  ['{ in_series: 2, in_parallel: 2 }', '{ in_series: 0, in_parallel: 0 }'],
  ['{ in_series: 2, in_parallel: 2 }', '{ in_series: 4, in_parallel: 1 }'],
  ['installed: 2023-05-20', 'installed: 2030-05-20'],
  ['date: 2024-06-08', 'date: 2026-06-20'],
])('%s typed as %s is checked all the same', (from, to) => {
  const library = libraryOf()
  expect(sample).toContain(from)
  library.put(path, sample.replace(from, to))
  const { findings, review, values } = checkFile(library, path, { today: '2026-11-25' })!
  expect(findings.filter(({ rule }) => rule === 'internal-error')).toEqual([])
  const words = [...findings.map(({ message }) => message), ...values().map(({ text }) => text)].join('\n')
  expect(words).not.toMatch(/NaN|Infinity|not a number|undefined/)
  expect(JSON.stringify(review!.figures.measurements)).not.toContain('NaN')
})
