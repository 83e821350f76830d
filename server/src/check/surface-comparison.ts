import type { Library } from '../library/library.ts'
import { compareOnSurface } from '../review/choosing/compare-on-surface.ts'
import type { Candidate, ControllerChoice, SurfaceRow } from '../review/choosing/row.ts'
import { shapeOf } from '../review/fit.ts'
import type { ResolvedArray, ResolvedSystem } from '../review/resolved.ts'
import type { Bundle } from '../wording/bundle.ts'

/**
 * Every panel of the library on a surface of a system, best first, in the first array that lies there.
 *
 * @param path  of the system
 * @returns null where the system has no such surface, or the surface no size
 */
export function surfaceComparison(
  library: Library,
  path: string,
  system: ResolvedSystem,
  id: string,
  bundle?: Bundle,
): readonly SurfaceRow[] | null {
  const surface = system.system.surfaces.find((one) => one.id?.value === id)
  if (!surface || !shapeOf(surface)) return null
  const array = system.arrays.find(({ panels }) => panels.some((one) => one.surface === surface))
  const place = { system, surface, ...(array && { array }) }
  return compareOnSurface(place, panelsOf(library, path), ownController(array), controllersOf(library, path), bundle)
}

/** The panels of the library around a file. */
export function panelsOf(library: Library, near: string): Candidate[] {
  return library
    .ofKind('panel', near)
    .filter(({ unread }) => !unread)
    .map(({ id, record, path }) => ({ id, panel: { record, path } }))
}

export function controllersOf(library: Library, near: string): readonly ControllerChoice[] {
  return library
    .ofKind('controller', near)
    .filter(({ unread }) => !unread)
    .map(({ id, record, path }) => ({ id, controller: { record, path } }))
}

/** The controller of the array; one that is written in the system goes by its name. */
export function ownController(array: ResolvedArray | undefined): ControllerChoice | undefined {
  const controller = array?.controller
  if (!controller) return undefined
  const id = array.entry.controller.id?.value ?? controller.record.name?.value ?? 'the controller of the array'
  return { id, controller }
}
