import type { Target } from '../review/choosing/laid-array.ts'
import type { Strings } from '../review/choosing/row.ts'
import { insertEntry, setScalar } from '../text/edits.ts'
import { childPointer, parentPointer } from '../text/pointer.ts'
import type { Edit } from '../text/span.ts'
import { isJson } from '../text/spelling.ts'
import { entryAtPointer, nodeAtPointer } from '../text/tree-queries.ts'
import type { Tree } from '../text/tree.ts'
import type { Bundle } from '../wording/bundle.ts'
import { named, phrase, sayIn, type Phrase } from '../wording/phrase.ts'
import { newArray } from './new-array.ts'
import type { SurfaceComparison } from './surface-comparison.ts'

/** What is to change in a system so that a panel lies on a surface, and what was done in words; or why that cannot be. */
export type Put = { readonly edits: readonly Edit[]; readonly done: string } | { readonly problem: Phrase }

/**
 * Puts a panel of the comparison, its count and its wiring into the system, as a new array where none lies on the surface; every
 * other character stays.
 */
export function putPanel(comparison: SurfaceComparison, id: string, bundle: Bundle | undefined): Put {
  const { tree, target, rows } = comparison
  const row = rows.find(({ panel }) => panel === id)
  if (!row) return { problem: phrase`there is no such panel in the comparison` }
  if (row.excluded !== null) return { problem: named(row.excluded) }
  const { strings } = row
  if (!strings) return { problem: phrase`how it is wired follows from a controller, and the library has no controller` }
  const say = sayIn(bundle)
  const put = target.array ? replaced(tree, target, id, strings, bundle) : newArray(comparison, id, strings, bundle)
  if ('problem' in put) return put
  const { in_series: series, in_parallel: parallel } = strings
  return {
    edits: put.edits,
    done: say`${series * parallel} x ${id} on ${target.surface.id?.value}, ${series} in series x ${parallel}${put.note}`,
  }
}

function replaced(tree: Tree, target: Target, id: string, strings: Strings, bundle: Bundle | undefined) {
  const panel = panelPointer(target)
  if (typeof panel !== 'string') return panel
  const panels = parentPointer(panel)
  const array = parentPointer(parentPointer(panels))
  const fields = [`${panels}/count`, `${array}/wiring/in_series`, `${array}/wiring/in_parallel`]
  if (tree.problems.length > 0 && fields.some((field) => !nodeAtPointer(tree, field)))
    return {
      problem: phrase`count and wiring can only be added to a file that can be read as a whole; correct the file first`,
    }
  const { in_series: series, in_parallel: parallel } = strings
  const edits = [
    setScalar(tree, panel, id),
    put(tree, panels, 'count', series * parallel, 'panel'),
    ...wiringPut(tree, array, strings),
  ]
  return { edits, note: otherController(target, strings, bundle) }
}

function wiringPut(tree: Tree, array: string, { in_series, in_parallel }: Strings): readonly Edit[] {
  const wiring = childPointer(array, 'wiring')
  const node = nodeAtPointer(tree, wiring)
  if (node?.kind === 'map' && node.entries.length > 0)
    return [put(tree, wiring, 'in_series', in_series), put(tree, wiring, 'in_parallel', in_parallel, 'in_series')]
  const quote = isJson(tree) ? '"' : ''
  const group = `{ ${quote}in_series${quote}: ${in_series}, ${quote}in_parallel${quote}: ${in_parallel} }`
  if (node) return [{ span: node.span, text: group }]
  const empty = entryAtPointer(tree, wiring)
  if (empty && empty.colon !== null)
    return [{ span: { start: empty.colon + 1, end: empty.colon + 1 }, text: ` ${group}` }]
  const { span, text } = insertEntry(tree, array, 'wiring', '', 'panels')
  return [{ span, text: isJson(tree) ? text + group : `${text} ${group}` }]
}

/** A number in its field, which is added where it is not there. */
function put(tree: Tree, parent: string, key: string, value: number, after?: string): Edit {
  const pointer = childPointer(parent, key)
  return entryAtPointer(tree, pointer)
    ? setScalar(tree, pointer, String(value))
    : insertEntry(tree, parent, key, String(value), after)
}

function otherController({ array }: Target, { controller }: Strings, bundle: Bundle | undefined): string {
  const own = array?.entry.controller.id?.value
  return own === undefined || own === controller
    ? ''
    : sayIn(bundle)`; they need the controller ${controller}, not ${own}`
}

/** Only an array with one kind of panels, which all lie on the surface, has one place for it. */
function panelPointer({ array, surface }: Target): string | { readonly problem: Phrase } {
  const [only, ...more] = array?.panels ?? []
  if (!only || more.length > 0 || only.surface !== surface)
    return { problem: phrase`the array has to hold one kind of panels, all on ${surface.id?.value}` }
  return only.entry.panel.id?.pointer ?? { problem: phrase`the array has to name its panel, which is replaced` }
}
