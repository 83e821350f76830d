import { stemOf } from '../records/stem.ts'
import { draftOf } from '../sheets/draft.ts'
import type { SheetFile } from '../reader/kept.ts'
import type { DraftParams, DraftResult } from './protocol.ts'
import type { Bundle } from '../wording/bundle.ts'
import { named, sayIn } from '../wording/phrase.ts'

/** A panel record with what a sheet is certain of; the models to choose from where it has several. */
export function draftFromSheet(
  read: SheetFile | null,
  { file, folder, model }: DraftParams,
  { today, bundle }: { readonly today: string; readonly bundle?: Bundle | undefined },
): DraftResult {
  const say = sayIn(bundle)
  const name = decodeURIComponent(file.slice(file.lastIndexOf('/') + 1))
  if (!read) return { problem: say`${name} cannot be opened.` }
  const { sheet, sha256 } = read
  if (sheet.problem !== null) return { problem: say`${name} cannot be read: ${named(sheet.problem)}.` }
  const names = sheet.models.map((one) => one.name)
  const chosen = sheet.models.length === 1 ? sheet.models[0] : sheet.models.find((one) => one.name === model)
  if (!chosen) return names.length === 0 ? { problem: say`No panel was found in ${name}.` } : { models: names }
  const several = sheet.models.length > 1
  return {
    id: stemOf((chosen.page === undefined && chosen.name) || name.replace(/\.pdf$/i, '')),
    text: draftOf(chosen, { source: pathFrom(folder, file), sha256, several, today, bundle }),
  }
}

/** The path that leads from a folder to a file, both by their address. */
function pathFrom(folder: string, file: string): string {
  const [from, to] = [folder.replace(/\/$/, '').split('/'), file.split('/')]
  const shared = to.findIndex((step, i) => step !== from[i])
  const steps = [...from.slice(shared).map(() => '..'), ...to.slice(shared).map(decodeURIComponent)]
  return steps.join('/')
}
