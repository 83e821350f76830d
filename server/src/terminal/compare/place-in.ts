import { resolveSystem } from '../../check/resolve-system.ts'
import type { Library } from '../../library/library.ts'
import type { ReadFile } from '../../records/read-file.ts'
import type { Place } from '../../review/choosing/laid-array.ts'
import { shapeOf } from '../../review/fit.ts'
import type { ResolvedArray, ResolvedSystem, Surface } from '../../review/resolved.ts'
import { CouldNotRun } from '../could-not-run.ts'

interface PlaceNames {
  /** Path of the system. */
  readonly system: string
  readonly surface: string
  readonly array?: string
}

/** A surface of a system by its id, with the array that panels on it would belong to. */
export function placeIn(
  library: Library,
  names: PlaceNames,
): { readonly file: ReadFile<'system'>; readonly place: Place } {
  const file = library.file(names.system) as ReadFile<'system'>
  const system = resolveSystem(library, file)
  const surface = surfaceOf(system, names.surface)
  if (!shapeOf(surface)) throw new CouldNotRun(`surface ${names.surface} has no length and width`)
  const array = arrayOn(system, surface, names.array)
  return { file, place: { system, surface, ...(array && { array }) } }
}

function surfaceOf({ system }: ResolvedSystem, id: string): Surface {
  const found = system.surfaces.find((one) => one.id?.value === id)
  if (!found) throw new CouldNotRun(`there is no surface \`${id}\`; ${ids('surfaces', system.surfaces)}`)
  return found
}

/** The array that the panels would belong to: the one that is named, or the only one on the surface. */
function arrayOn(system: ResolvedSystem, surface: Surface, id: string | undefined): ResolvedArray | undefined {
  const entries = system.arrays.map(({ entry }) => entry)
  if (id !== undefined) {
    const named = system.arrays.find(({ entry }) => entry.id?.value === id)
    if (!named) throw new CouldNotRun(`there is no array \`${id}\`; ${ids('arrays', entries)}`)
    return named
  }
  const there = system.arrays.filter(({ panels }) => panels.some((one) => one.surface === surface))
  if (there.length > 1) {
    const names = ids('arrays', there.map(({ entry }) => entry)) // prettier-ignore
    throw new CouldNotRun(`several arrays lie on ${surface.id?.value}; name one with --array: ${names}`)
  }
  return there[0]
}

function ids(what: string, list: readonly { readonly id?: { readonly value: string } }[]): string {
  const names = list.flatMap(({ id }) => id?.value ?? [])
  return names.length > 0 ? `the system has the ${what} ${names.join(', ')}` : `the system has no ${what} with an id`
}
