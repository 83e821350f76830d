import { acceptanceFacts } from '../check/acceptance-facts.ts'
import { isHalfTyped } from '../quantities/half-typed.ts'
import { reading } from '../records/facts.ts'
import type { FieldInfo } from '../records/field-info.ts'
import { infoAt } from '../records/info-at.ts'
import type { ReadFile } from '../records/read-file.ts'
import { schemas } from '../records/schemas.generated.ts'
import { hazards } from '../text/hazards/index.ts'
import { inventory } from '../text/tree-queries.ts'

/** What is found of the structure of a line, and not of a value: a line that is being typed has most of it. */
const structural: ReadonlySet<string> = new Set(
  [
    ...hazards,
    ...Object.values(acceptanceFacts),
    reading.syntax,
    reading.unknownField,
    reading.misplacedField,
    reading.missingField,
    reading.emptyField,
    reading.wrongKind,
    reading.missingUnit,
  ].map(({ id }) => id),
)

/** Whether a finding asks for what may follow on the line that is being typed. */
export const waitsForLine = (rule: string): boolean => structural.has(rule) || /-missing$|-without-energy$/.test(rule)

/** The pointer of the value at a place if more of it may follow there: a digit, the rest of a unit, of a word or of a text. */
export function unfinishedAt({ tree, kind }: ReadFile, cursor: number): string | null {
  let end = cursor
  while (0 < end && ' \t'.includes(tree.text[end - 1]!)) end--
  const scalar = inventory(tree).scalars.find(({ span }) => span.start <= end && end <= span.end)
  const root = schemas[kind]
  if (!scalar || !root) return null
  const typed = tree.text.slice(scalar.span.start, end).replace(/^["']/, '')
  return mayGrow(typed, infoAt(root, scalar.pointer), end === scalar.span.end) ? scalar.pointer : null
}

function mayGrow(typed: string, info: FieldInfo | null, isAtEnd: boolean): boolean {
  if (!isAtEnd) return /[\d.,]$/.test(typed)
  switch (info?.type) {
    case 'quantity':
      return isHalfTyped(typed, info.quantity!)
    case 'choice':
      return (info.choices ?? []).some(({ value }) => value !== typed && value.startsWith(typed))
    default:
      return true
  }
}
