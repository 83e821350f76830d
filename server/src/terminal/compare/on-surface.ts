import { resolveSystem } from '../../check/resolve-system.ts'
import { controllersOf, ownController, panelsOf } from '../../check/surface-comparison.ts'
import type { Library } from '../../library/library.ts'
import type { ReadFile } from '../../records/read-file.ts'
import { compareOnSurface } from '../../review/choosing/compare-on-surface.ts'
import type { Target } from '../../review/choosing/laid-array.ts'
import type { Candidate, ControllerChoice, SurfaceRow } from '../../review/choosing/row.ts'
import { shapeOf } from '../../review/fit.ts'
import type { ResolvedArray, ResolvedSystem, Surface } from '../../review/resolved.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { absolute } from '../paths.ts'
import { select } from '../select.ts'
import type { World } from '../world.ts'
import { phrase, type Phrase } from '../../wording/phrase.ts'

export interface SurfaceChoice {
  readonly surface: string
  readonly array?: string
  /** A panel that is set beside those of the library: a file, or the id of one of them. */
  readonly with?: string
}

/** Every panel of the library on one surface of a system. */
export interface SurfaceComparison {
  readonly file: ReadFile<'system'>
  readonly place: Target
  readonly rows: readonly SurfaceRow[]
  readonly candidates: readonly Candidate[]
  readonly controllers: readonly ControllerChoice[]
  /** Id of the panel that is set beside those of the library. */
  readonly beside: string | null
}

export async function onSurface(world: World, path: string, choice: SurfaceChoice): Promise<SurfaceComparison> {
  const full = absolute(world.cwd, path)
  const beside = choice.with === undefined ? null : absolute(world.cwd, choice.with)
  const isFile = beside !== null && (await world.standing(beside)) === 'file'
  const { library } = await select(world, isFile ? [path, choice.with!] : [path])
  const file = library.file(full) as ReadFile<'system'> | undefined
  if (file?.kind !== 'system')
    throw new CouldNotRun(phrase`\`${path}\` is no system description; its name ends in .system.yaml`)
  if (file.unread) throw new CouldNotRun(phrase`\`${path}\` was not read: ${file.unread.because}`)
  const system = resolveSystem(library, file)
  const surface = surfaceOf(system, choice.surface)
  if (!shapeOf(surface)) throw new CouldNotRun(phrase`surface ${choice.surface} has no length and width`)
  const array = arrayOn(system, surface, choice.array)
  const place = { system, surface, ...(array && { array }) }
  const candidates = panelsOf(library, full)
  if (isFile && !candidates.some(({ panel }) => panel.path === beside)) candidates.push(panelIn(library, beside))
  else if (choice.with !== undefined && !isFile && !candidates.some(({ id }) => id === choice.with))
    throw new CouldNotRun(phrase`--with ${choice.with}: there is no such file, and no panel of that id in the library`)
  const controllers = controllersOf(library, full)
  const rows = compareOnSurface(place, candidates, ownController(array), controllers, world.bundle)
  return {
    file,
    place,
    rows,
    candidates,
    controllers,
    beside: isFile ? panelIn(library, beside).id : (choice.with ?? null),
  }
}

function surfaceOf({ system }: ResolvedSystem, id: string): Surface {
  const found = system.surfaces.find((one) => one.id?.value === id)
  if (!found) throw new CouldNotRun(phrase`there is no surface \`${id}\`; ${thereAre(system.surfaces, 'surfaces')}`)
  return found
}

/** The array that the panels would belong to: the one that is named, or the only one on the surface. */
function arrayOn(system: ResolvedSystem, surface: Surface, id: string | undefined): ResolvedArray | undefined {
  const entries = system.arrays.map(({ entry }) => entry)
  if (id !== undefined) {
    const named = system.arrays.find(({ entry }) => entry.id?.value === id)
    if (!named) throw new CouldNotRun(phrase`there is no array \`${id}\`; ${thereAre(entries, 'arrays')}`)
    return named
  }
  const there = system.arrays.filter(({ panels }) => panels.some((one) => one.surface === surface))
  if (there.length > 1) {
    const names = idsOf(there.map(({ entry }) => entry)).join(', ')
    throw new CouldNotRun(phrase`several arrays lie on ${surface.id?.value}; name one with --array: ${names}`)
  }
  return there[0]
}

interface WithId {
  readonly id?: { readonly value: string }
}

const idsOf = (list: readonly WithId[]) => list.flatMap(({ id }) => id?.value ?? [])

function thereAre(list: readonly WithId[], what: 'surfaces' | 'arrays'): Phrase {
  const names = idsOf(list).join(', ')
  if (what === 'arrays')
    return names === '' ? phrase`the system has no arrays with an id` : phrase`the system has the arrays ${names}`
  return names === '' ? phrase`the system has no surfaces with an id` : phrase`the system has the surfaces ${names}`
}

function panelIn(library: Library, path: string): Candidate {
  const file = library.file(path)
  if (file?.kind !== 'panel' || file.unread) throw new CouldNotRun(phrase`--with ${path}: it is no panel record`)
  return { id: file.id, panel: { record: (file as ReadFile<'panel'>).record, path } }
}
