import { resolveSystem } from '../../check/resolve-system.ts'
import { surfaceComparison, type SurfaceComparison } from '../../check/surface-comparison.ts'
import { targetOn } from '../../check/target-on.ts'
import { withErrors } from '../../check/with-errors.ts'
import type { Library } from '../../library/library.ts'
import type { ReadFile } from '../../records/read-file.ts'
import type { Candidate } from '../../review/choosing/row.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { absolute } from '../paths.ts'
import { select } from '../select.ts'
import type { World } from '../world.ts'
import { phrase } from '../../wording/phrase.ts'

export interface SurfaceChoice {
  readonly surface: string
  readonly array?: string
  /** A panel that is set beside those of the library: a file, or the id of one of them. */
  readonly with?: string
  /** Id of the one that is to be written. */
  readonly write?: string
}

/** Every panel of the library on one surface of a system. */
export interface OnSurface extends SurfaceComparison {
  readonly file: ReadFile<'system'>
  /** Id of the panel that is set beside those of the library. */
  readonly beside: string | null
  /** Ids of those on the front, of the one beside and of the one to be written whose records have errors. */
  readonly withErrors: readonly string[]
}

export async function onSurface(world: World, path: string, choice: SurfaceChoice): Promise<OnSurface> {
  const full = absolute(world.cwd, path)
  const beside = choice.with === undefined ? null : absolute(world.cwd, choice.with)
  const isFile = beside !== null && (await world.standing(beside)) === 'file'
  const { library } = await select(world, isFile ? [path, choice.with!] : [path])
  const file = library.file(full) as ReadFile<'system'> | undefined
  if (file?.kind !== 'system')
    throw new CouldNotRun(phrase`\`${path}\` is no system description; its name ends in .system.yaml`)
  if (file.unread) throw new CouldNotRun(phrase`\`${path}\` was not read: ${file.unread.because}`)
  const target = targetOn(resolveSystem(library, file), choice.surface, choice.array)
  if ('problem' in target) throw new CouldNotRun(target.problem)
  const besides = isFile ? panelIn(library, beside) : undefined
  const comparison = surfaceComparison(library, file, target, besides, world.bundle)
  if (choice.with !== undefined && !isFile && !comparison.candidates.some(({ id }) => id === choice.with))
    throw new CouldNotRun(phrase`--with ${choice.with}: there is no such file, and no panel of that id in the library`)
  const id = besides?.id ?? choice.with ?? null
  const likely = new Set([id, choice.write, ...comparison.rows.filter(({ front }) => front).map(({ panel }) => panel)])
  const looked = comparison.candidates
    .filter((one) => likely.has(one.id))
    .map((one) => ({ id: one.id, path: one.panel.path }))
  return { ...comparison, file, beside: id, withErrors: withErrors(library, looked, world.today) }
}

function panelIn(library: Library, path: string): Candidate {
  const file = library.file(path)
  if (file?.kind !== 'panel' || file.unread) throw new CouldNotRun(phrase`--with ${path}: it is no panel record`)
  return { id: file.id, panel: { record: (file as ReadFile<'panel'>).record, path } }
}
