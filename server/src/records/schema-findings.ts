import type { Finding } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import { renameKey, setScalar } from '../text/edits.ts'
import type { Entry, Node, Tree } from '../text/tree.ts'
import { entryAtPointer, nodeAtPointer } from '../text/tree-queries.ts'
import { reading } from './facts.ts'
import type { FieldInfo, RecordKind } from './field-info.ts'
import { infoAt, nameOf } from './info-at.ts'
import { nearest } from './nearest.ts'
import { plain } from './plain.ts'
import { schemas } from './schemas.generated.ts'
import * as validators from './validators.generated.js'
import type { Complaint } from './validators.generated.js'

/** Checks a tree against the JSON Schema of its kind; each complaint becomes a sentence at the key or value it is about. */
export function schemaFindings(kind: RecordKind, tree: Tree, swallowed: ReadonlySet<string>): readonly Finding[] {
  const info = schemas[kind]
  if (!info) return []
  const validate = validators[kind]
  const found = [...emptyFields(tree.root, swallowed)]
  const complaints = validate(plain(tree.root, swallowed) ?? {}) ? [] : (validate.errors ?? [])
  for (const complaint of [...complaints, ...inlineComplaints(info, tree.root, swallowed)]) {
    const one = explain(complaint, info, tree)
    if (one) found.push(one)
  }
  return found
}

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
      const field = info.fields?.find(({ key }) => key === entry.key)
      if (field) yield* inlineComplaints(field, entry.value, swallowed)
    }
}

export function explain(complaint: Complaint, root: FieldInfo, tree: Tree): Finding | null {
  const { instancePath: pointer, keyword, params } = complaint
  const node = nodeAtPointer(tree, pointer) ?? null
  const field = infoAt(root, pointer)
  const info =
    node?.kind === 'map' && field?.type === 'reference' && field.record ? (schemas[field.record] ?? field) : field
  const entry = entryAtPointer(tree, pointer)
  const place = { pointer, span: node?.span ?? entry?.keySpan ?? { start: 0, end: 0 } }
  const name = info ? nameOf(info) : pointer
  const typed = node?.kind === 'scalar' ? node.text : ''

  switch (keyword) {
    case 'additionalProperties':
      return unknownField(String(params.additionalProperty), node, info, root, tree)
    case 'required':
      return missingField(String(params.missingProperty), pointer, entry, info, tree)
    case 'enum': {
      const words = (info?.choices ?? []).map((c) => c.value)
      const near = nearest(typed, words)
      const corrections = near ? [correction(tree, pointer, near, 'the nearest known word')] : []
      const list = words.length <= 6 ? words.join(', ') : `${words.slice(0, 6).join(', ')} and ${words.length - 6} more`
      const mean = near ? ` Did you mean ${near}?` : ''
      return finding(reading.notAChoice, place, `${name} "${typed}" is none of ${list}.${mean}`, { corrections })
    }
    case 'const':
      return finding(reading.wrongFormat, place, `This is format ${typed}, and only format 1 is known.`, {
        corrections: [correction(tree, pointer, '1', 'the format that is known')],
      })
    case 'type':
      return finding(reading.wrongKind, place, `${name} is ${aOf(node)}, where ${expected(info)} is expected.`)
    case 'pattern':
      return finding(reading.wrongText, place, `${name} "${typed}" is not written as ${expected(info)}.`)
    case 'minimum':
    case 'maximum':
      return finding(
        reading.outOfRange,
        place,
        `${name} ${typed} is ${keyword === 'minimum' ? 'below' : 'above'} ${String(params.limit)}.`,
      )
    case 'minItems':
    case 'maxItems': {
      const has = node?.kind === 'list' ? node.items.length : 0
      return finding(
        reading.outOfRange,
        place,
        `${name} has ${has} values, where ${String(params.limit)} are expected.`,
      )
    }
    default:
      return finding(reading.wrongKind, place, `${name} does not fit: ${keyword} ${JSON.stringify(params)}.`)
  }
}

function unknownField(
  key: string,
  node: Node | null,
  info: FieldInfo | null,
  root: FieldInfo,
  tree: Tree,
): Finding | null {
  const entry = node?.kind === 'map' ? node.entries.find((e) => e.key === key) : undefined
  if (!entry) return null
  const place = { pointer: entry.pointer, span: entry.keySpan }
  const here = (info?.fields ?? []).map((f) => f.key)
  const present = new Set(node?.kind === 'map' ? node.entries.map((e) => e.key) : [])
  const home = homeOf(key, root)
  const near = nearest(
    key,
    here.filter((k) => !present.has(k)),
  )
  if (home !== null && !near) {
    const where = home === '' ? 'at the left margin' : `under ${home}`
    return finding(
      reading.misplacedField,
      place,
      `${key} stands ${info?.key ? `under ${info.key}` : 'at the left margin'}; it belongs ${where}.`,
    )
  }
  const mean = near ? ` Did you mean ${near}?` : ''
  const corrections = near
    ? [
        {
          pointer: entry.pointer,
          text: near,
          why: 'the nearest known field',
          certainty: 'guess' as const,
          edits: [renameKey(tree, entry.pointer, near)],
        },
      ]
    : []
  return finding(
    reading.unknownField,
    place,
    `${key} is no field of ${info?.key || 'this record'}, so it is not read.${mean}`,
    { corrections },
  )
}

/** Where a key belongs when it is a known field of exactly one other group; '' for the top level. */
function homeOf(key: string, root: FieldInfo): string | null {
  const homes = [root, ...(root.fields ?? []).filter((f) => f.type === 'group')].filter((g) =>
    g.fields?.some((f) => f.key === key),
  )
  return homes.length === 1 ? homes[0]!.key : null
}

function missingField(key: string, pointer: string, entry: Entry | null, info: FieldInfo | null, tree: Tree): Finding {
  const field = info?.fields?.find((f) => f.key === key)
  const own = entryAtPointer(tree, `${pointer}/${key}`)
  const first = tree.root?.kind === 'map' ? tree.root.entries[0]?.keySpan : undefined
  const span = own?.keySpan ?? entry?.keySpan ?? first ?? { start: 0, end: 0 }
  const example = field?.examples?.[0] ? `, such as ${key}: ${field.examples[0]}` : ''
  const what = field && field.symbol ? `${field.symbol} (${key})` : key
  const message = own
    ? `${what} has no value yet${example}.`
    : `${what} is missing ${entry ? `under ${entry.key}` : 'from the record'}${example}.`
  return finding(reading.missingField, { pointer: own ? own.pointer : pointer, span }, message)
}

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

function correction(tree: Tree, pointer: string, text: string, why: string) {
  return { pointer, text, why, certainty: 'guess' as const, edits: [setScalar(tree, pointer, text)] }
}

function aOf(node: Node | null): string {
  if (node === null) return 'nothing'
  return node.kind === 'map' ? 'a group of fields' : node.kind === 'list' ? 'a list' : `"${node.text}"`
}

function expected(info: FieldInfo | null): string {
  const example = info?.examples?.[0] ? `, such as ${info.examples[0]}` : ''
  switch (info?.type) {
    case 'quantity':
      return `a number with a unit${example}`
    case 'integer':
      return `a whole number${example}`
    case 'number':
      return `a number${example}`
    case 'date':
      return `year-month-day${example}`
    case 'group':
    case 'map':
      return `a group of fields (${(info.fields ?? [])
        .slice(0, 4)
        .map((f) => f.key)
        .join(', ')})`
    case 'list':
      return 'a list'
    case 'boolean':
      return 'true or false'
    case 'reference':
      return `the id of a ${info.record} record`
    default:
      return `a text${example}`
  }
}
