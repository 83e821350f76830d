import { phrase } from '../../wording/phrase.ts'
import { lineAround } from '../lines.ts'
import { readTree } from '../read-tree.ts'
import { applyEdits, type Edit, type Span } from '../span.ts'
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
    const indents = tabbed(tree.text)
    const { edits, fixed } = fixing(tree, indents)
    const [here, there] = [pointers(tree), pointers(fixed)]
    const moved = [...here, ...there].filter((pointer) => !here.has(pointer) || !there.has(pointer))
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
        spoils: moved,
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

/** Spaces in place of the tabs; where YAML stumbles over those, the tabs left out. */
function fixing(tree: Tree, indents: readonly Span[]): { readonly edits: readonly Edit[]; readonly fixed: Tree } {
  const with_ = (step: string) => {
    const edits = indents.map((span): Edit => ({
      span,
      text: tree.text.slice(span.start, span.end).replaceAll('\t', step),
    }))
    return { edits, fixed: readTree(applyEdits(tree.text, edits)) }
  }
  const spaces = with_(unit(tree.text))
  if (spaces.fixed.problems.length === 0) return spaces
  const none = with_('')
  return none.fixed.problems.length === 0 ? none : spaces
}

function tabbed(text: string): Span[] {
  return [...text.matchAll(/^ *\t[ \t]*/gm)].map(({ index, 0: indent }) => ({
    start: index,
    end: index + indent.length,
  }))
}

/** The file's own step of indentation. */
function unit(text: string): string {
  return /:[ \t]*(?:#.*)?\r?\n( +)\S/.exec(text)?.[1] ?? '  '
}

function pointers(tree: Tree): Set<string> {
  return new Set(entriesOf(tree).map(({ entry }) => entry.pointer))
}
