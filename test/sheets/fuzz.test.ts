import { readdirSync, readFileSync } from 'node:fs'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { createReader, type Reader } from '../../server/src/reader/ask.ts'
import { complaints } from './complaints.ts'
import { spoiled } from './spoiled.ts'

let reader: Reader
beforeAll(() => void (reader = createReader('dist/sheet-reader.js')))
afterAll(() => reader.end())

const folder = 'samples/library/sheets'

test('spoiled sheets: each is read or said to be unreadable', { timeout: 240_000 }, async () => {
  const sheets = readdirSync(folder).map((name) => readFileSync(`${folder}/${name}`))
  const found: string[] = []
  // the last ones have letters without a width
  for (const seed of [...Array.from({ length: 60 }, (_, i) => i + 1), 476, 521, 609]) {
    const bytes = spoiled(sheets[seed % sheets.length]!, seed)
    const start = performance.now()
    const { sheet } = await reader.read(bytes)
    found.push(...complaints(sheet, performance.now() - start).map((one) => `seed ${seed}: ${one}`))
  }
  expect(found).toEqual([])
})
