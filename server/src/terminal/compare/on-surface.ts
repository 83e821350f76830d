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
  /** The one that is to be written: a file, or an id. */
  readonly write?: string
}

/** Every panel of the library on one surface of a system. */
export interface OnSurface extends SurfaceComparison {
  readonly file: ReadFile<'system'>
  /** Id of the panel that is set beside those of the library. */
  readonly beside: string | null
  /** Id of the panel that is to be written. */
  readonly write: string | null
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
  const own = library.ofKind('panel', full)
  const besides = isFile ? panelIn(library, beside, own, choice.with!) : undefined
  const comparison = surfaceComparison(library, file, target, besides, world.bundle)
  if (comparison.candidates.length === 0) throw new CouldNotRun(phrase`the library of \`${path}\` has no panel records`)
  if (choice.with !== undefined && !isFile && !comparison.candidates.some(({ id }) => id === choice.with))
    throw new CouldNotRun(phrase`--with ${choice.with}: there is no such file, and no panel of that id in the library`)
  const id = besides?.id ?? choice.with ?? null
  const write = choice.write === undefined ? null : idOf(choice.write)
  if (write !== null && write === besides?.id && !own.some((one) => one.path === beside))
    throw new CouldNotRun(
      phrase`--write ${choice.write}: the library of the system has no such record; copy it there first`,
    )
  const likely = new Set([id, write, ...comparison.rows.filter(({ front }) => front).map(({ panel }) => panel)])
  const looked = comparison.candidates
    .filter((one) => likely.has(one.id))
    .map((one) => ({ id: one.id, path: one.panel.path }))
  return { ...comparison, file, beside: id, write, withErrors: withErrors(library, looked, world.today) }

  /** Of a file that is named; anything else is an id already. */
  function idOf(typed: string): string {
    const path = absolute(world.cwd, typed)
    return comparison.candidates.find(({ panel }) => panel.path === path)?.id ?? typed
  }
}

/** A panel that another of the library is called like goes by its path. */
function panelIn(library: Library, path: string, own: readonly ReadFile[], typed: string): Candidate {
  const file = library.file(path)
  if (file?.kind !== 'panel' || file.unread) throw new CouldNotRun(phrase`--with ${path}: it is no panel record`)
  const isTaken = own.some((one) => one.id === file.id && one.path !== path)
  return { id: isTaken ? typed : file.id, panel: { record: (file as ReadFile<'panel'>).record, path } }
}
