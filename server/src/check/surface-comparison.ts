import type { Library } from '../library/library.ts'
import type { ReadFile } from '../records/read-file.ts'
import { compareOnSurface } from '../review/choosing/compare-on-surface.ts'
import { arraysBeside, type Target } from '../review/choosing/laid-array.ts'
import type { Candidate, ControllerChoice, SurfaceRow } from '../review/choosing/row.ts'
import { notCounted } from '../review/not-counted.ts'
import type { ResolvedArray } from '../review/resolved.ts'
import type { Tree } from '../text/tree.ts'
import type { Bundle } from '../wording/bundle.ts'
import { phraseInWords } from '../wording/phrase.ts'

/** Panels on one surface of a system, best first, with what they were chosen from. */
export interface SurfaceComparison {
  /** Of the system. */
  readonly tree: Tree
  readonly target: Target
  readonly rows: readonly SurfaceRow[]
  readonly candidates: readonly Candidate[]
  readonly controllers: readonly ControllerChoice[]
  /** Of the array that the panels would belong to. */
  readonly controller: string | null
  /** What of the rest of the system the customer's limits are checked without, in sentences. */
  readonly notCounted: readonly string[]
}

/**
 * Every panel of the library on a surface of a system.
 *
 * @param besides  a panel that is set beside those of the library
 */
export function surfaceComparison(
  library: Library,
  { path, tree }: Pick<ReadFile<'system'>, 'path' | 'tree'>,
  target: Target,
  besides?: Candidate,
  bundle?: Bundle,
): SurfaceComparison {
  const own = panelsOf(library, path)
  const isOwn = own.some(({ panel }) => panel.path === besides?.panel.path)
  const candidates = besides && !isOwn ? [...own, besides] : own
  const controllers = controllersOf(library, path)
  const present = ownController(target.array)
  const rows = compareOnSurface(target, candidates, present, controllers, bundle)
  const rest = { ...target.system, arrays: arraysBeside(target) }
  const lacking = [...notCounted(rest)].map((one) => phraseInWords(one, bundle))
  const controller = present?.id ?? null
  return { tree, target, rows, candidates, controllers, controller, notCounted: lacking }
}

/** The panels of the library around a file. */
function panelsOf(library: Library, near: string): Candidate[] {
  return library
    .ofKind('panel', near)
    .filter(({ unread }) => !unread)
    .map(({ id, record, path }) => ({ id, panel: { record, path } }))
}

function controllersOf(library: Library, near: string): readonly ControllerChoice[] {
  return library
    .ofKind('controller', near)
    .filter(({ unread }) => !unread)
    .map(({ id, record, path }) => ({ id, controller: { record, path } }))
}

/** The controller of the array; one that is written in the system goes by its name. */
function ownController(array: ResolvedArray | undefined): ControllerChoice | undefined {
  const controller = array?.controller
  if (!controller) return undefined
  const id = array.entry.controller.id?.value ?? controller.record.name?.value ?? 'the controller of the array'
  return { id, controller }
}
