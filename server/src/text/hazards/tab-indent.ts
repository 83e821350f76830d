import { phrase } from '../../wording/phrase.ts'
import { lineAround } from '../lines.ts'
import { readTree } from '../read-tree.ts'
import { readWhole } from '../read-whole.ts'
import { applyEdits, type Edit, type Span } from '../span.ts'
import { spacesFor, tabIndents } from '../tabs.ts'
import { entriesOf } from '../tree-queries.ts'
import type { Tree } from '../tree.ts'
import { hazard, yamlSource, type HazardRule } from './hazard.ts'

export const tabIndent: HazardRule = {
  id: 'tab-indents',
  severity: 'error',
  reason: 'YAML counts spaces only, so a line that begins with a tab can land in the wrong map.',
  source: yamlSource('6.1'),
  find: (tree) => {
    const first = tree.problems.find(({ code }) => code === 'TAB_AS_INDENT')
    if (!first) return []
    const indents = tabIndents(tree.text)
    const { edits, fixed } = fixing(tree, indents)
    // with a tab as one sign, as others read it
    const blind = readWhole(tree.text)
    const [here, there] = [pointers(blind), pointers(fixed)]
    const moved = [...here, ...there].filter((pointer) => !here.has(pointer) || !there.has(pointer))
    const ends = new Set(indents.map(({ end }) => end))
    const indented = new Set(
      [tree, blind].flatMap(entriesOf).flatMap(({ entry }) => (ends.has(entry.keySpan.start) ? [entry.pointer] : [])),
    )
    const start = indents[0]?.end ?? first.span.start
    const entry = entriesOf(tree).find(({ entry }) => start <= entry.keySpan.start)?.entry
    const words = /^[ \t]*([^\r\n:#]*)/.exec(tree.text.slice(lineAround(tree.text, start).start))![1]!.trim()
    const more = indents.length - 1
    const others = more < 1 ? '' : more === 1 ? phrase` and 1 more line` : phrase` and ${more} more lines`
    const certainty = moved.length === 0 && fixed.problems.length === 0 ? 'same' : 'guess'
    return [
      hazard({
        message: phrase`A tab indents ${words}${others}: YAML counts spaces only. Write spaces instead.`,
        pointer: entry?.pointer ?? '',
        span: indents[0] ?? first.span,
        spoils: moved.filter((pointer) => indented.has(pointer)),
        swallows: moved,
        explains: fixed.problems.length > 0 ? indents : [...indents, ...tree.problems.map(({ span }) => span)],
        fixes:
          edits.length === 0
            ? []
            : [
                {
                  edits,
                  why: edits.some(({ text }) => text !== '') ? phrase`spaces instead of tabs` : phrase`no tabs`,
                  certainty,
                  text: entry?.value?.kind === 'scalar' ? entry.value.text : '',
                },
              ],
      }),
    ]
  },
}

/** Spaces in place of the tabs: those that leave YAML least to complain of. */
function fixing(tree: Tree, indents: readonly Span[]): { readonly edits: readonly Edit[]; readonly fixed: Tree } {
  const ways = spacesFor(tree.text, indents).map((edits) => ({
    edits,
    fixed: readTree(applyEdits(tree.text, edits)),
  }))
  return ways.reduce((best, way) => (way.fixed.problems.length < best.fixed.problems.length ? way : best))
}

function pointers(tree: Tree): Set<string> {
  return new Set(entriesOf(tree).map(({ entry }) => entry.pointer))
}
