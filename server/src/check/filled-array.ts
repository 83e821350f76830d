import type { Target } from '../review/choosing/laid-array.ts'
import type { Strings } from '../review/choosing/row.ts'
import type { ResolvedPanels } from '../review/resolved.ts'
import { insertEntry, setScalar } from '../text/edits.ts'
import { childPointer, parentPointer } from '../text/pointer.ts'
import type { Edit } from '../text/span.ts'
import { isJson } from '../text/spelling.ts'
import { entryAtPointer, nodeAtPointer } from '../text/tree-queries.ts'
import type { Tree } from '../text/tree.ts'
import { inFlow, type Typed } from '../text/write-like.ts'
import type { Bundle } from '../wording/bundle.ts'
import { phrase, sayIn, type Phrase } from '../wording/phrase.ts'

interface Problem {
  readonly problem: Phrase
}

/** A panel, its count, its surface and its wiring in the array of a target, whose panels are replaced. */
export function filledArray(
  tree: Tree,
  target: Target,
  panel: string,
  strings: Strings,
  bundle: Bundle | undefined,
): { readonly edits: readonly Edit[]; readonly note: string; readonly array: string | null } | Problem {
  const array = `/arrays/${target.system.arrays.indexOf(target.array!)}`
  const laid = panelsPut(tree, target, array, panel, strings)
  if ('problem' in laid) return laid
  const wiring = ['in_series', 'in_parallel'].map((key) => `${array}/wiring/${key}`)
  if (tree.problems.length > 0 && [...laid.fields, ...wiring].some((field) => !nodeAtPointer(tree, field)))
    return {
      problem: phrase`count and wiring can only be added to a file that can be read as a whole; correct the file first`,
    }
  return {
    edits: [...laid.edits(), ...wiringPut(tree, array, strings)],
    array: target.array!.entry.id?.value ?? null,
    note: otherController(target, strings, bundle),
  }
}

/** The fields that have to be there or are added, and the edits. */
interface Laid {
  readonly fields: readonly string[]
  readonly edits: () => readonly Edit[]
}

/** Only an array with one kind of panels, which all lie on the surface or name none, has one place for it. */
function panelsPut(tree: Tree, target: Target, array: string, panel: string, strings: Strings): Laid | Problem {
  const [only, ...more] = target.array!.panels
  const count = strings.in_series * strings.in_parallel
  const surface = target.surface.id?.value ?? ''
  if (only) return more.length === 0 ? replaced(tree, target, only, panel, count) : severalKinds(surface)
  const list = childPointer(array, 'panels')
  const node = nodeAtPointer(tree, list)
  if (node && node.kind !== 'list')
    return { problem: phrase`\`panels\` of the array is no list; correct the file first` }
  return { fields: [list], edits: () => [putWhole(tree, array, 'panels', [{ panel, count, surface }], 'id')] }
}

function replaced(tree: Tree, { surface }: Target, only: ResolvedPanels, panel: string, count: number): Laid | Problem {
  const id = surface.id?.value ?? ''
  const isPlaced = only.entry.surface !== undefined
  if (isPlaced && only.surface !== surface) return severalKinds(id)
  const { pointer } = only.entry.panel.id ?? {}
  if (pointer === undefined) return { problem: phrase`the array has to name its panel, which is replaced` }
  const item = parentPointer(pointer)
  return {
    fields: ['count', 'surface'].map((key) => childPointer(item, key)),
    edits: () => [
      setScalar(tree, pointer, panel),
      put(tree, item, 'count', count, 'panel'),
      ...(isPlaced ? [] : [put(tree, item, 'surface', id, 'count')]),
    ],
  }
}

const severalKinds = (surface: string): Problem => ({
  problem: phrase`the array has to hold one kind of panels, all on ${surface}`,
})

function wiringPut(tree: Tree, array: string, { in_series, in_parallel }: Strings): readonly Edit[] {
  const wiring = childPointer(array, 'wiring')
  const node = nodeAtPointer(tree, wiring)
  if (node?.kind === 'map' && node.entries.length > 0)
    return [put(tree, wiring, 'in_series', in_series), put(tree, wiring, 'in_parallel', in_parallel, 'in_series')]
  return [putWhole(tree, array, 'wiring', { in_series, in_parallel }, 'panels')]
}

/** A list or group on one line, in place of an empty one or where there is none. */
function putWhole(tree: Tree, parent: string, key: string, value: Typed, after: string): Edit {
  const pointer = childPointer(parent, key)
  const written = inFlow(tree, value, null)
  const node = nodeAtPointer(tree, pointer)
  if (node) return { span: node.span, text: written }
  const empty = entryAtPointer(tree, pointer)
  if (empty && empty.colon !== null)
    return { span: { start: empty.colon + 1, end: empty.colon + 1 }, text: ` ${written}` }
  const { span, text } = insertEntry(tree, parent, key, '', after)
  return { span, text: isJson(tree) ? text + written : `${text} ${written}` }
}

/** A value in its field, which is added where it is not there. */
function put(tree: Tree, parent: string, key: string, value: number | string, after?: string): Edit {
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
