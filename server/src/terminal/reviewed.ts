import { checkFile } from '../check/check.ts'
import type { Checked } from '../check/checked.ts'
import type { Review } from '../check/review.ts'
import type { Library } from '../library/library.ts'
import { reading } from '../records/facts.ts'
import { CouldNotRun } from './could-not-run.ts'
import { reportOf, type FileReport } from './file-report.ts'
import { loadSystem } from './load-system.ts'
import { reportMistakes } from './mistakes.ts'
import { absolute } from './paths.ts'
import type { World } from './world.ts'
import { named, phrase } from '../wording/phrase.ts'

/** One system with its figures and findings, and the library that it was read from. */
export interface Reviewed {
  readonly library: Library
  readonly checked: Checked
  readonly review: Review
  readonly report: FileReport
}

/** @throws CouldNotRun  for what is no system description, or cannot be read */
export async function reviewed(world: World, path: string): Promise<Reviewed> {
  const full = absolute(world.cwd, path)
  const standing = await world.standing(full)
  if (!standing) throw new CouldNotRun(phrase`there is no file \`${path}\``)
  if (standing === 'folder') throw new CouldNotRun(phrase`\`${path}\` is a folder; name one system`)
  const library = await loadSystem(world, path, full)
  const file = library.file(full)
  if (file?.kind !== 'system')
    throw new CouldNotRun(phrase`\`${path}\` is no system description; its name ends in .system.yaml`)
  if (file.unread) throw new CouldNotRun(phrase`\`${path}\` was not read: ${file.unread.because}`)
  const checked = checkFile(library, full, world)!
  const { review } = checked
  const report = reportOf(library, checked, world.cwd)
  reportMistakes(world, report.path, checked.findings)
  if (!review)
    throw new CouldNotRun(named(checked.findings.find(({ rule }) => rule === reading.internal.id)?.message ?? ''))
  return { library, checked, review, report }
}
