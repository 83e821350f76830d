import { joined, phrase } from '../wording/phrase.ts'
import { jointsIn, type Joint } from './joints.ts'
import { reading, type Line, type Surroundings } from './line.ts'
import { applyEdits, type Edit } from './span.ts'
import type { OtherReading } from './tree.ts'

/**
 * `size: { … } weight: 2.2 kg`, `imp: 5.92 A voc: 22.1 V`, `imp: 5.92 A, voc:22.1 V`, `walked_on: falsearrays:`,
 * `surfaces: - id: roof`: lines that became one.
 */
export function partedLine(line: Line, around: Surroundings): readonly OtherReading[] {
  if (around.prose.has(/^ *(?:- +)*([A-Za-z_][\w-]*):/.exec(line.text)?.[1] ?? '')) return []
  const { own, joints } = jointsIn(line.text, around.names)
  const fields = joints.filter(({ isItem }) => !isItem)
  const sure = fields.filter(({ colon }) => !colon)
  const ways = [
    ...(fields.length > 1 ? [fields] : []),
    ...(1 < sure.length && sure.length < fields.length ? [sure] : []),
    ...joints.map((one) => [one]),
  ]
  return ways.flatMap((way) =>
    columnsFor(line, way[0]!, around).map((column) => parted(line, { joints: way, own, column, eol: around.eol })),
  )
}

/** Where the second line may begin: in the column of the first, where it goes on below, or further out. */
function columnsFor({ column, text }: Line, { end, isItem }: Joint, { next, outer }: Surroundings): readonly number[] {
  const below = next && column < next.indent ? [next.indent, ...(isItem ? [next.indent - 2] : [])] : []
  const isHead = /:\s*$/.test(text.slice(0, end))
  const item = isItem && /^ *- /.test(text) ? [/^ */.exec(text)![0].length] : []
  const inside = below.length > 0 ? below : [column + 2]
  return [...new Set([...item, ...(isHead ? inside : [column, ...below]), ...outer, 0])]
}

/** A way to part a line. */
interface Way {
  readonly joints: readonly Joint[]
  /** To the colon of the first field. */
  readonly own: readonly Edit[]
  readonly column: number
  readonly eol: string
}

function parted({ start, text }: Line, { joints, own, column, eol }: Way): OtherReading {
  const breaks = joints.map((one): Edit => {
    const dash = one.isItem && text[one.start] !== '-' ? '- ' : ''
    return { span: { start: one.end, end: one.start }, text: eol + ' '.repeat(column) + dash }
  })
  const colons = joints.flatMap(({ colon }) => colon ?? [])
  // a line that ends with the colon needs no blank behind it
  const spaced = own.filter(({ span }) => span.end !== joints[0]!.end)
  const edits = [...spaced, ...breaks, ...colons].sort((a, b) => a.span.start - b.span.start)
  const inFile = edits.map((edit) => ({
    ...edit,
    span: { start: edit.span.start + start, end: edit.span.end + start },
  }))
  const [first] = joints as [Joint]
  const names = joined(joints.map(({ name }) => (name.length <= 40 ? name : `${name.slice(0, 37)}...`)))
  const sentence =
    joints.length > 1 ? phrase`${names} need lines of their own.` : phrase`${names} needs a line of its own.`
  const why = joints.length > 1 ? phrase`on lines of their own` : phrase`on a line of its own`
  const fixed = applyEdits(text, colons).slice(first.start)
  return {
    ...reading('two-fields', inFile, [start + first.start, first.name.length], sentence, why, fixed),
    mustFit: own.length > 0 || joints.some(({ isUnsure }) => isUnsure),
  }
}
