import { candidateAt, controllersOf } from '../../check/surface-comparison.ts'
import type { Library } from '../../library/library.ts'
import { recordOfPath } from '../../records/kinds.ts'
import type { ReadFile } from '../../records/read-file.ts'
import { ranked } from '../../review/choosing/compare-on-surface.ts'
import type { Place } from '../../review/choosing/laid-array.ts'
import type { Candidate, ControllerChoice, SurfaceRow } from '../../review/choosing/row.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { absolute } from '../paths.ts'
import { select } from '../select.ts'
import type { World } from '../world.ts'
import { placeIn } from './place-in.ts'
import { rowsOn } from './rows-on.ts'

export interface SurfaceChoice {
  readonly surface: string
  readonly array?: string
  /** A panel that is set beside those of the library: a file, or the id of one of them. */
  readonly with?: string
}

/** Every panel of the library on one surface of a system. */
export interface SurfaceComparison {
  readonly file: ReadFile<'system'>
  readonly place: Place
  readonly rows: readonly SurfaceRow[]
  /** A panel of one of the rows. */
  readonly candidate: (id: string) => Candidate
  readonly controllers: readonly ControllerChoice[]
  /** Id of the panel that is set beside those of the library. */
  readonly beside: string | null
}

export async function onSurface(world: World, path: string, choice: SurfaceChoice): Promise<SurfaceComparison> {
  const full = absolute(world.cwd, path)
  const beside = choice.with === undefined ? null : absolute(world.cwd, choice.with)
  const isFile = beside !== null && (await world.standing(beside)) === 'file'
  const { library, texts } = await select(world, isFile ? [path, choice.with!] : [path])
  const file = library.file(full) as ReadFile<'system'> | undefined
  if (file?.kind !== 'system')
    throw new CouldNotRun(`\`${path}\` is no system description; its name ends in .system.yaml`)
  if (file.unread) throw new CouldNotRun(`\`${path}\` was not read: ${file.unread.because}`)
  const names = { system: full, surface: choice.surface, ...(choice.array !== undefined && { array: choice.array }) }
  const { place } = placeIn(library, names)
  const panels = [...library.pathsOfKind('panel', full)]
  if (isFile && !panels.includes(beside)) panels.push(panelIn(library, beside).panel.path!)
  else if (choice.with !== undefined && !isFile && !panels.some((one) => recordOfPath(one)?.id === choice.with))
    throw new CouldNotRun(`--with ${choice.with}: there is no such file, and no panel of that id in the library`)
  const rows = ranked(await rowsOn(world, library, { ...names, texts, panels }))
  return {
    file,
    place,
    rows,
    candidate: (id) =>
      candidateAt(
        library,
        panels.find((one) => recordOfPath(one)?.id === id)!,
      )!,
    controllers: controllersOf(library, full),
    beside: isFile ? panelIn(library, beside).id : (choice.with ?? null),
  }
}

function panelIn(library: Library, path: string): Candidate {
  const candidate = candidateAt(library, path)
  if (!candidate) throw new CouldNotRun(`--with ${path}: it is no panel record`)
  return candidate
}
