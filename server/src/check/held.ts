import type { ReadFile } from '../records/read-file.ts'
import type { Beside } from '../sheets/beside.ts'
import { hold, type Held } from '../sheets/hold.ts'
import type { Sheet } from '../sheets/sheet.ts'

const known = new WeakMap<ReadFile, { readonly sheet: Sheet; readonly held: Held }>()

/** A record compared with its sheet, once for all that ask; null without a sheet that could be read. */
export function heldOf(file: ReadFile<'panel'>, beside: Beside | undefined): Held | null {
  if (beside?.state !== 'read' || beside.sheet.problem !== null) return null
  const { sheet } = beside
  const before = known.get(file)
  if (before?.sheet === sheet) return before.held
  const held = hold(file, sheet)
  known.set(file, { sheet, held })
  return held
}
