import { readFileSync } from 'node:fs'
import { sheetOf } from '../../server/src/reader/read-bytes.ts'
import type { Sheet } from '../../server/src/sheets/sheet.ts'

const read = new Map<string, Promise<Sheet>>()

/** A sheet of the sample library, read by the real library. */
export function sampleSheet(name: string): Promise<Sheet> {
  const sheet = read.get(name) ?? sheetOf(new Uint8Array(readFileSync(`samples/library/sheets/${name}`)))
  read.set(name, sheet)
  return sheet
}
