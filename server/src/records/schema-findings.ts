import { phrase } from '../wording/phrase.ts'
import type { Finding } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import { nameless } from '../text/hazards/missing-colon.ts'
import type { Span } from '../text/span.ts'
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
function inlineComplaints(
  info: FieldInfo,
  node: Node | null,
  swallowed: ReadonlySet<string>,
  into: Complaint[] = [],
): readonly Complaint[] {
  if (node?.kind === 'list' && info.item)
    for (const item of node.items) inlineComplaints(info.item, item, swallowed, into)
  if (node?.kind !== 'map') return into
  if (info.type === 'reference' && info.record) {
    const validate = validators[info.record]
    if (validate(plain(node, swallowed) ?? {})) return into
    for (const complaint of validate.errors ?? []) {
      const missing = complaint.keyword === 'required' ? complaint.params.missingProperty : null
      if (missing !== 'format' && missing !== 'name')
        into.push({ ...complaint, instancePath: node.pointer + complaint.instancePath })
    }
  } else
    for (const { key, value } of node.entries) {
      const field = value?.kind === 'scalar' ? undefined : fieldsByKey(info).get(key)
      if (field) inlineComplaints(field, value, swallowed, into)
    }
  return into
}

function emptyFields(node: Node | null, skip: ReadonlySet<string>, into: Finding[] = []): readonly Finding[] {
  if (node?.kind === 'list') for (const item of node.items) emptyFields(item, skip, into)
  if (node?.kind !== 'map') return into
  for (const { key, keySpan, pointer, colon, value } of node.entries) {
    if (value?.kind === 'scalar' || skip.has(pointer)) continue
    if (value) emptyFields(value, skip, into)
    else if (node.entries.filter((one) => one.key === key).length === 1)
      into.push(emptyField(key, pointer, key.trim() === '' ? colonOf(keySpan, colon) : keySpan))
  }
  return into
}

const emptyField = (key: string, pointer: string, span: Span): Finding =>
  finding(reading.emptyField, { pointer, span }, key.trim() === '' ? nameless : phrase`${key} has no value.`)

const colonOf = (keySpan: Span, colon: number | null): Span =>
  colon === null ? keySpan : { start: colon, end: colon + 1 }
