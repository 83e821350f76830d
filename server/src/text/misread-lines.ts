import { readEdited } from './edited-tree.ts'
import type { Line } from './line.ts'
import { lineStarts, positionAt } from './lines.ts'
import { isFull, linesOf, surroundings } from './lines-around.ts'
import type { Shape } from './shape.ts'
import type { Node, OtherReading, Tree } from './tree.ts'
import { readingsOfFields } from './within-line.ts'

/** Beyond these a file was not typed by hand, or is no record. */
const mostLines = 12

const ownName = ({ text }: Line) => /^ *(?:- +)*([A-Za-z_][\w-]*)/.exec(text)?.[1] ?? ''

/**
 * A tree with lines read in another way although YAML has no complaint, as `imp: 5.92 A voc:22.1 V`, where for it the second
 * field is a part of the first value.
 *
 * @param places  offsets in the lines in doubt
 * @returns       null where none is: more fields have to be there or fewer out of place then, and none twice
 */
export function withMisreadLines(
  tree: Tree,
  places: readonly number[],
  shape: Shape,
  read: (text: string) => Tree,
): Tree | null {
  if (places.length === 0 || tree.root === null) return null
  const { text } = tree
  const starts = lineStarts(text)
  const full = linesOf(text, starts).filter(isFull)
  const own = tree.otherwise ?? []
  const changed = own.flatMap(({ edits }) => edits)
  const taken: OtherReading[] = []
  const at = [...new Set(places.map((place) => starts[positionAt(starts, place).line]!))].slice(0, mostLines)
  let best = tree
  for (const start of at) {
    const index = full.findIndex((line) => line.start === start)
    const line = full[index]
    if (!line || shape.texts.has(ownName(line)) || isChanged(line)) continue
    const readings = readingsOfFields(line, surroundings(text, full, index, shape))
    if (readings.length === 0) continue
    const before = [...own, ...taken].flatMap(({ edits }) => edits)
    const most = shape.misfits(best)
    const fields = fieldsIn(best.root)
    const tries = readings.map((one) => {
      const changedTree = readEdited(text, [...before, ...one.edits], read)
      return { ...one, changedTree, misfits: shape.misfits(changedTree) }
    })
    const complaints = best.problems.length - own.length - taken.length
    const [found] = tries
      .filter(
        ({ changedTree: { problems, root }, misfits }) =>
          problems.length <= complaints && misfits <= most && (misfits < most || fields < fieldsIn(root)),
      )
      .sort((a, b) => a.misfits - b.misfits || b.edits.length - a.edits.length)
    if (!found) continue
    taken.push({ edits: found.edits, problem: found.problem, mustFit: true })
    const problems = [...[...own, ...taken].map(({ problem }) => problem), ...found.changedTree.problems]
    best = { ...found.changedTree, problems: problems.sort((a, b) => a.span.start - b.span.start) }
  }
  const { effort, complaints = tree.problems.length } = tree
  return taken.length === 0
    ? null
    : { ...best, otherwise: [...own, ...taken], complaints, ...(effort !== undefined && { effort }) }

  function isChanged({ start, text: line }: Line) {
    return changed.some(({ span }) => start <= span.end && span.start <= start + line.length)
  }
}

function fieldsIn(node: Node | null): number {
  if (node?.kind === 'list') return node.items.reduce((sum, item) => sum + fieldsIn(item), 0)
  if (node?.kind === 'map') return node.entries.reduce((sum, { value }) => sum + 1 + fieldsIn(value), 0)
  return 0
}

/** Where a colon has a name before it and neither a blank nor a slash behind it. */
export function tightColons(text: string): readonly number[] {
  const found: number[] = []
  for (let at = text.indexOf(':'); 0 <= at; at = text.indexOf(':', at + 1)) {
    if (at + 1 === text.length || mayFollow.has(text.charCodeAt(at + 1))) continue
    if (/(?:^|[,;\s])[A-Za-z_][\w-]*$/.test(text.slice(Math.max(0, at - 40), at))) found.push(at)
  }
  return found
}

/** A blank, the end of a line, and the slash of an address. */
const mayFollow: ReadonlySet<number> = new Set([32, 10, 13, 47])
