import { readEdited } from './edited-tree.ts'
import { lineStarts, positionAt } from './lines.ts'
import { readingsAt, readingsOf } from './line-readings.ts'
import { treeOrNull } from './scan.ts'
import type { Shape } from './shape.ts'
import type { Edit, Span } from './span.ts'
import type { OtherReading, Tree } from './tree.ts'

/** Ways to read a text. */
export interface Readers {
  readonly read: (text: string) => Tree
  /** Without the whole grammar of YAML, but for single lines; where it is needed, the start of the line at which that shows. */
  readonly quickly: (text: string) => Tree | number
  readonly shape?: Shape | undefined
}

/** How often the lines of a broken file are looked at again. */
const mostRounds = 6
/** Characters that the whole grammar reads to try other lines, and of a text of which only a correction is tried. */
const mostRead = 96 * 1024
const mostReadAgain = 16 * 1024

/**
 * Reads a broken file with lines moved into the column of their neighbours, or taken for comments, where that leaves YAML less to
 * complain of: one problem, with its fix, instead of one for every line that follows. What was typed does not change.
 *
 * @param corrected  the file of which `typed` is a correction: its lines are read as there, unless YAML by itself complains
 *   more than there, and others are tried only where that is worse
 */
export function withBetterLines(typed: Tree, { read, quickly, shape }: Readers, corrected?: Tree): Tree {
  const { text } = typed
  const isWorse = corrected && typed.problems.length > (corrected.complaints ?? corrected.problems.length)
  const before = isWorse ? undefined : corrected
  let spent = typed.effort ?? 0
  const readWith = (edits: readonly Edit[], reader: (text: string) => Tree | null) => {
    const tree = readEdited(text, edits, reader)
    spent += tree?.effort ?? 0
    return tree
  }
  const carried = before ? readAlike(typed, carriedOver(before, text), (edits) => readWith(edits, read)!, shape) : null
  const most = spent + (carried ? mostReadAgain : mostRead)
  let [best, taken] = carried ?? [typed, []]
  const enough = (carried && before?.problems.length) ?? 0
  for (let round = 0; round < mostRounds && best.problems.length > Math.max(0, enough - taken.length); round++) {
    const edits = editsOf(taken)
    const tries = readingsOf(best, shape).filter((one) => isApart(one.edits, edits) && (shape || !one.mustFit))
    const misfits = shape?.misfits(best) ?? 0
    const readBy = (one: OtherReading, reader: (text: string) => Tree | null): readonly Better[] => {
      const tree = readWith([...edits, ...one.edits], reader)
      if (!tree || tree.problems.length >= best.problems.length) return []
      const better = { ...one, tree, misfits: shape?.misfits(tree) ?? 0 }
      return one.mustFit && misfits < better.misfits ? [] : [better]
    }
    // where every line is in its place again, the whole grammar would find no more
    const sound = tries.flatMap((one) => readBy(one, (tried) => treeOrNull(quickly(tried))))
    const stepped = sound.length === 0 && taken.length === 0 ? lineByLine(typed, quickly, shape) : null
    if (stepped) {
      ;[best, taken] = stepped
      break
    }
    const better = simplest(sound.length > 0 ? sound : tries.flatMap((one) => (most < spent ? [] : readBy(one, read))))
    if (!better) break
    best = better.tree
    taken = [...taken, { edits: better.edits, problem: better.problem }]
  }
  const problems = [...taken.map(({ problem }) => problem), ...best.problems]
  const inOrder = problems.sort((a, b) => a.span.start - b.span.start)
  return taken.length === 0
    ? { ...typed, effort: spent }
    : { ...best, effort: spent, problems: inOrder, otherwise: taken, complaints: typed.problems.length }
}

/**
 * Several lines in other columns, found one after the other: each time the reading with which most of the lines below have a
 * place; null where that does not come to the end, or leaves more to complain of.
 */
function lineByLine(
  { text, problems }: Tree,
  quickly: Readers['quickly'],
  shape: Shape | undefined,
): [Tree, readonly OtherReading[]] | null {
  let taken: readonly OtherReading[] = []
  let reached = lineOf(text, quickly(text))
  while (taken.length < Math.min(mostRounds, problems.length)) {
    const edits = editsOf(taken)
    const tries = readingsAt(text, reached, shape)
      .filter((one) => isApart(one.edits, edits) && !one.mustFit)
      .map((one) => {
        let line = Infinity
        const tree = readEdited(text, [...edits, ...one.edits], (tried) => {
          const read = quickly(tried)
          line = lineOf(tried, read)
          return treeOrNull(read)
        })
        return { ...one, tree, line }
      })
      .filter(({ line }) => reached < line)
    const furthest = Math.max(...tries.map(({ line }) => line))
    const best = tries
      .filter(({ line }) => line === furthest)
      .sort((a, b) => complaints(a.tree) - complaints(b.tree) || a.edits.length - b.edits.length)[0]
    if (!best) return null
    taken = [...taken, { edits: best.edits, problem: best.problem }]
    if (best.tree) return taken.length + complaints(best.tree) <= problems.length ? [best.tree, taken] : null
    reached = furthest
  }
  return null
}

const complaints = (tree: Tree | null) => tree?.problems.length ?? 0

/** Counted from 0; none where all was read. */
const lineOf = (text: string, read: Tree | number): number =>
  typeof read === 'number' ? positionAt(lineStarts(text), read).line : Infinity

interface Better extends OtherReading {
  readonly tree: Tree
  readonly misfits: number
}

/** Of what leaves least to complain of. */
function simplest(readings: readonly Better[]): Better | undefined {
  return [...readings].sort(
    (a, b) =>
      a.tree.problems.length - b.tree.problems.length || a.misfits - b.misfits || a.edits.length - b.edits.length,
  )[0]
}

/** With these lines read in another way, one by one; null where a reading of the text by itself would not have tried one, or not gained by it. */
function readAlike(
  typed: Tree,
  known: readonly OtherReading[],
  read: (edits: readonly Edit[]) => Tree,
  shape: Shape | undefined,
): [Tree, readonly OtherReading[]] | null {
  const { text } = typed
  let best = typed
  for (const [i, { edits }] of known.entries()) {
    const tries = readingsOf(best, shape).slice(0, mostRead / text.length)
    if (!tries.some((one) => JSON.stringify(one.edits) === JSON.stringify(edits))) return null
    const tree = read(editsOf(known.slice(0, i + 1)))
    if (tree.problems.length >= best.problems.length) return null
    best = tree
  }
  return [best, known]
}

const editsOf = (readings: readonly OtherReading[]) => readings.flatMap(({ edits }) => edits)

/** How lines were read that are the same in another text, which differs in one place. */
function carriedOver({ text: from, otherwise = [] }: Tree, to: string): readonly OtherReading[] {
  const shorter = Math.min(from.length, to.length)
  let start = 0
  while (start < shorter && from[start] === to[start]) start++
  let alike = 0
  while (alike < shorter - start && from.at(-1 - alike) === to.at(-1 - alike)) alike++
  const end = from.length - alike
  const moved = ({ span, text }: Edit): Edit => ({ span: movedSpan(span), text })
  const movedSpan = (span: Span): Span =>
    span.start < start ? span : { start: span.start + to.length - from.length, end: span.end + to.length - from.length }
  const isSame = ({ span }: Pick<Edit, 'span'>) => span.end < start || end < span.start
  return otherwise
    .filter(({ edits, problem }) => [...edits, problem].every(isSame))
    .map(({ edits, problem: { span, fix, ...said } }) => ({
      edits: edits.map(moved),
      problem: { ...said, span: movedSpan(span), ...(fix && { fix: { ...fix, edits: fix.edits.map(moved) } }) },
    }))
}

const isApart = (some: readonly Edit[], others: readonly Edit[]) =>
  some.every(({ span }) => others.every((other) => span.start !== other.span.start && !isOver(span, other.span)))

const isOver = (a: Span, b: Span) => a.start < b.end && b.start < a.end
