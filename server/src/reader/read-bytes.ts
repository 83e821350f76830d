import { readSheet } from '../sheets/read-sheet.ts'
import { unreadable, type Sheet } from '../sheets/sheet.ts'
import { mostBytes, tooLarge } from './limits.ts'
import { pagesOf } from './pdf.ts'
import { inCatalogue } from '../wording/phrase.ts'

/** A sheet from its bytes. Never throws: what cannot be read says why. */
export async function sheetOf(bytes: Uint8Array): Promise<Sheet> {
  if (bytes.length > mostBytes) return unreadable(tooLarge)
  try {
    return readSheet(await pagesOf(bytes))
  } catch (error) {
    return unreadable(why(error))
  }
}

function why(error: unknown): string {
  const { name } = error as { name?: string }
  if (name === 'PasswordException') return inCatalogue`it is locked with a password`
  if (name === 'InvalidPDFException') return inCatalogue`it is damaged or no PDF`
  return inCatalogue`the PDF library gave up on it`
}
