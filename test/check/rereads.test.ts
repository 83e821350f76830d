import { expect, test, vi } from 'vitest'
import { readFileSync } from 'node:fs'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import type * as read from '../../server/src/records/read.ts'

const texts = vi.hoisted((): string[] => [])
vi.mock('../../server/src/records/read.ts', async (original) => {
  const module = await original<typeof read>()
  const readFile: typeof read.readFile = (path, text, currency) => {
    texts.push(String(text))
    return module.readFile(path, text, currency)
  }
  return { ...module, readFile }
})

test('reads a corrected text once, to explain the slip and to try its correction', () => {
  const library = createLibrary()
  const path = 'voc-vmp-swapped.panel.yaml'
  library.put(path, readFileSync(`samples/mistakes/${path}`, 'utf8'))
  const { findings } = checkFile(library, path, { today: '2026-11-25' })!
  expect(findings.flatMap(({ corrections }) => corrections)).not.toEqual([])
  expect(texts.length).toBeGreaterThan(1)
  expect(texts.filter((text, i) => texts.indexOf(text) !== i)).toEqual([])
})
