import { phrase } from '../wording/phrase.ts'
import type { Finding } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import type { Node, Tree } from '../text/tree.ts'
import { explain } from './explain.ts'
import { reading } from './facts.ts'
import type { FieldInfo, RecordKind } from './field-info.ts'
import { fieldsByKey } from './info-at.ts'
import { missingFields } from './missing-fields.ts'
import { plain } from './plain.ts'
import { schemas } from './schemas.generated.ts'
import { unknownFields } from './unknown-field.ts'
import * as validators from './validators.generated.js'
import type { Complaint } from './validators.generated.js'

/** Checks a tree against the JSON Schema of its kind; each complaint becomes a sentence at the key or value it is about. */
export function schemaFindings(kind: RecordKind, tree: Tree, swallowed: ReadonlySet<string>): readonly Finding[] {
  const info = schemas[kind]
  if (!info) return []
  const validate = validators[kind]
  const own = validate(plain(tree.root, swallowed) ?? {}) ? [] : (validate.errors ?? [])
  const complaints = [...own, ...inlineComplaints(info, tree.root, swallowed)]
  const required = complaints.filter((c) => c.keyword === 'required').map(missingPointer)
  const missing = new Set(required.filter((pointer) => !swallowed.has(pointer)))
  const keys = complaints
    .filter((c) => c.keyword === 'additionalProperties')
    .map((c) => ({ parent: c.instancePath, key: String(c.params.additionalProperty) }))
  const { findings: unknown, meant } = unknownFields(keys, info, tree, missing)
  return [
    ...unknown,
    ...missingFields(
      [...missing].filter((pointer) => !meant.has(pointer)),
      info,
      tree,
    ),
    ...emptyFields(tree.root, new Set([...swallowed, ...missing, ...meant])),
    ...complaints.flatMap((complaint) => explain(complaint, info, tree) ?? []),
  ]
}

const missingPointer = ({ instancePath, params }: Complaint) => `${instancePath}/${String(params.missingProperty)}`

/**
 * What is wrong inside records that stand in place of an id, by the schema of their own kind. Being part of another file
 * they need neither a format nor a name.
 */
function* inlineComplaints(info: FieldInfo, node: Node | null, swallowed: ReadonlySet<string>): Generator<Complaint> {
  if (node?.kind === 'list' && info.item)
    for (const item of node.items) yield* inlineComplaints(info.item, item, swallowed)
  if (node?.kind !== 'map') return
  if (info.type === 'reference' && info.record) {
    const validate = validators[info.record]
    if (validate(plain(node, swallowed) ?? {})) return
    for (const complaint of validate.errors ?? []) {
      const missing = complaint.keyword === 'required' ? complaint.params.missingProperty : null
      if (missing !== 'format' && missing !== 'name')
        yield { ...complaint, instancePath: node.pointer + complaint.instancePath }
    }
  } else
    for (const entry of node.entries) {
      const field = fieldsByKey(info).get(entry.key)
      if (field) yield* inlineComplaints(field, entry.value, swallowed)
    }
}

function* emptyFields(node: Node | null, skip: ReadonlySet<string>): Generator<Finding> {
  if (node?.kind === 'list') for (const item of node.items) yield* emptyFields(item, skip)
  if (node?.kind !== 'map') return
  for (const entry of node.entries) {
    if (skip.has(entry.pointer)) continue
    if (entry.value === null)
      yield finding(
        reading.emptyField,
        { pointer: entry.pointer, span: entry.keySpan },
        phrase`${entry.key} has no value.`,
      )
    else yield* emptyFields(entry.value, skip)
  }
}
