import { readSheet } from '../sheets/read-sheet.ts'
import { unreadable, type Sheet } from '../sheets/sheet.ts'
import { mostBytes, tooLarge } from './limits.ts'
import { pagesOf } from './pdf.ts'

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
  if (name === 'PasswordException') return 'it is locked with a password'
  if (name === 'InvalidPDFException') return 'it is damaged or no PDF'
  return 'the PDF library gave up on it'
}
