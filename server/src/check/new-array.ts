import type { Strings } from '../review/choosing/row.ts'
import { takersOf, takesOf } from '../review/choosing/strings-for.ts'
import { appendItem } from '../text/edits.ts'
import type { Edit } from '../text/span.ts'
import type { SurfaceComparison } from './surface-comparison.ts'
import type { Bundle } from '../wording/bundle.ts'
import { phrase, sayIn, type Phrase } from '../wording/phrase.ts'

/**
 * An array for a surface on which none lies. It names a controller where only one can be meant: the only one of the library that takes
 * the strings, or of several that do the one that the other arrays name.
 */
export function newArray(
  { tree, target, candidates, controllers }: SurfaceComparison,
  panel: string,
  strings: Strings,
  bundle: Bundle | undefined,
): { readonly edits: readonly Edit[]; readonly note: string; readonly array: string } | { readonly problem: Phrase } {
  const say = sayIn(bundle)
  const { system, surface } = target
  const candidate = candidates.find(({ id }) => id === panel)!
  const takers = takersOf(takesOf(target, candidate), strings, controllers).map(({ id }) => id)
  const inUse = new Set(system.arrays.flatMap(({ entry }) => entry.controller.id?.value ?? []))
  const usual = takers.filter((id) => inUse.has(id))
  const [controller] = takers.length === 1 ? takers : usual.length === 1 ? usual : []
  const id = freeId(surface.id?.value ?? 'array', new Set(system.arrays.map(({ entry }) => entry.id?.value)))
  const { in_series, in_parallel } = strings
  const array = {
    id,
    panels: [{ panel, count: in_series * in_parallel, surface: surface.id?.value ?? '' }],
    wiring: { in_series, in_parallel },
    ...(controller !== undefined && { controller }),
  }
  const edits = tree.problems.length > 0 ? null : appendItem(tree, 'arrays', array, 'surfaces')
  if (!edits) return { problem: phrase`\`arrays\` of the system cannot take another array; correct the file first` }
  return {
    edits,
    array: id,
    note:
      controller === undefined
        ? say`, as the new array ${id}, without a controller: ${takers.join(', ')} would take them; name one in the file; its cable is not written`
        : say`, as the new array ${id}, on a controller ${controller} of its own; its cable is not written`,
  }
}

function freeId(wanted: string, taken: ReadonlySet<string | undefined>): string {
  for (let n = 1; ; n++) {
    const id = n === 1 ? wanted : `${wanted}-${n}`
    if (!taken.has(id)) return id
  }
}
