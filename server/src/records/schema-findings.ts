import type { Finding } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import type { Node, Tree } from '../text/tree.ts'
import { complaintsOf, type Complaint } from './complaints.ts'
import { explain } from './explain.ts'
import { reading } from './facts.ts'
import type { RecordKind } from './field-info.ts'
import { missingFields } from './missing-fields.ts'
import { schemas } from './schemas.generated.ts'
import { unknownField } from './unknown-field.ts'

/** Checks a tree against the JSON Schema of its kind; each complaint becomes a sentence at the key or value it is about. */
export function schemaFindings(kind: RecordKind, tree: Tree, swallowed: ReadonlySet<string>): readonly Finding[] {
  const info = schemas[kind]
  if (!info) return []
  const complaints = complaintsOf(info, tree.root, swallowed)
  const required = complaints.filter((c) => c.keyword === 'required').map(missingPointer)
  const missing = new Set(required.filter((pointer) => !swallowed.has(pointer)))
  const unknown = complaints
    .filter((c) => c.keyword === 'additionalProperties')
    .flatMap((c) => unknownField(c.pointer, c.key!, info, tree, missing) ?? [])
  const meant = new Set(unknown.flatMap(({ corrections, pointer }) => corrections.map((c) => sibling(pointer, c.text))))
  return [
    ...unknown,
    ...missingFields(
      [...missing].filter((pointer) => !meant.has(pointer)),
      info,
      tree,
    ),
    ...emptyFields(tree.root, new Set([...swallowed, ...missing])),
    ...complaints.flatMap((complaint) => explain(complaint, info, tree) ?? []),
  ]
}

const missingPointer = ({ pointer, key }: Complaint) => `${pointer}/${key}`
const sibling = (pointer: string, key: string) => `${pointer.slice(0, pointer.lastIndexOf('/'))}/${key}`

function* emptyFields(node: Node | null, skip: ReadonlySet<string>): Generator<Finding> {
  if (node?.kind === 'list') for (const item of node.items) yield* emptyFields(item, skip)
  if (node?.kind !== 'map') return
  for (const entry of node.entries) {
    if (skip.has(entry.pointer)) continue
    if (entry.value === null)
      yield finding(reading.emptyField, { pointer: entry.pointer, span: entry.keySpan }, `${entry.key} has no value.`)
    else yield* emptyFields(entry.value, skip)
  }
}
