import { phrase } from '../wording/phrase.ts'
import { finding } from '../findings/make.ts'
import { readTree } from '../text/read-tree.ts'
import type { Tree } from '../text/tree.ts'
import { asMeant } from './as-meant.ts'
import { reading } from './facts.ts'
import { hazardsOf } from './hazards.ts'
import { internalError } from './internal-error.ts'
import type { RecordKind } from './field-info.ts'
import { recordOfPath } from './kinds.ts'
import type { ReadFile } from './read-file.ts'
import { readRecord } from './read-record.ts'
import { schemaFindings } from './schema-findings.ts'
import { notRead, type FileText } from './unread.ts'
import { schemas } from './schemas.generated.ts'

/**
 * Reads one file: YAML hazards first, then the schema, then the quantities from their printed text. Never throws: a mistake
 * of our own becomes a finding of this file, so that others are read all the same. Corrections are as the readers propose
 * them: `check` tries them before they are offered.
 *
 * @param currency  ISO 4217 code of a bare price
 * @returns         null when the name says that it is none of ours
 */
export function readFile(path: string, text: FileText, currency?: string): ReadFile | null {
  const what = recordOfPath(path)
  if (!what) return null
  if (typeof text !== 'string') {
    return {
      path,
      ...what,
      ...nothingOf(what.kind, ''),
      unread: text,
      readFindings: [notRead('file', text)],
    } as ReadFile
  }
  try {
    return { path, ...what, ...read(what.kind, readTree(text), currency) } as ReadFile
  } catch (error) {
    return { path, ...what, ...nothingOf(what.kind, text), readFindings: [internalError(error)] } as ReadFile
  }
}

function nothingOf(kind: RecordKind, text: string) {
  const tree = { text, root: null, problems: [], comments: [] }
  return { tree, ...understood(kind, tree) }
}

function read(kind: RecordKind, typed: Tree, currency: string | undefined) {
  const hazards = hazardsOf(typed)
  const info = schemas[kind]
  const { tree, findings: words } = info ? asMeant(info, typed) : { tree: typed, findings: [] }
  const { record, fields, findings } = understood(kind, tree, hazards.spoiled, currency)
  const unreadable = tree.root === null && hazards.findings.length > 0
  const nothing = tree.root === null && !unreadable
  const others = findings.flatMap(({ corrections }) =>
    corrections.flatMap(({ also = [] }) => also.map((one) => one.pointer)),
  )
  const reported = new Set(hazards.findings.map(({ pointer }) => pointer))
  const readFindings = [
    ...hazards.findings,
    ...words,
    ...(unreadable || nothing ? [] : schemaFindings(kind, tree, new Set([...hazards.swallowed, ...others]))).filter(
      ({ rule, pointer }) => rule !== reading.wrongKind.id || !reported.has(pointer),
    ),
    ...findings,
    ...(nothing
      ? [
          finding(
            reading.missingField,
            { pointer: '', span: { start: 0, end: 0 } },
            phrase`The ${kind} record is empty; wattproof new ${kind} begins one.`,
          ),
        ]
      : []),
  ]
  return { tree, record, fields, readFindings }
}

function understood(kind: RecordKind, tree: Tree, spoiled: ReadonlySet<string> = new Set(), currency?: string) {
  const info = schemas[kind]
  return info
    ? readRecord(info, tree.root, { tree, spoiled, currency })
    : { record: {}, fields: new Map(), findings: [] }
}
