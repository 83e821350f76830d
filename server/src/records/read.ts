import { named, phrase } from '../wording/phrase.ts'
import type { Finding } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import { readMisread, readTree } from '../text/read-tree.ts'
import type { Tree } from '../text/tree.ts'
import { asMeant } from './as-meant.ts'
import { reading } from './facts.ts'
import { hazardsOf } from './hazards.ts'
import { internalError } from './internal-error.ts'
import type { RecordKind } from './field-info.ts'
import { recordOfPath } from './kinds.ts'
import type { ReadFile } from './read-file.ts'
import { readRecord } from './read-record.ts'
import { shapeOf } from './shape.ts'
import { schemaFindings } from './schema-findings.ts'
import { notRead, type FileText } from './unread.ts'
import { schemas } from './schemas.generated.ts'

/**
 * Reads one file: YAML hazards first, then the schema, then the quantities from their printed text. Never throws: a mistake
 * of our own becomes a finding of this file, so that others are read all the same. Corrections are as the readers propose
 * them: `check` tries them before they are offered.
 *
 * @param currency  ISO 4217 code of a bare price
 * @param before    the tree of the file of which this text is a correction
 * @returns         null when the name says that it is none of ours
 */
export function readFile(path: string, text: FileText, currency?: string, before?: Tree): ReadFile | null {
  const what = recordOfPath(path)
  if (!what) return null
  if (typeof text !== 'string') return { ...nothingOf(path, what, '', notRead('file', text)), unread: text }
  try {
    return read({ path, ...what }, readTree(text, shapeOf(what.kind), before), currency)
  } catch (error) {
    return nothingOf(path, what, text, internalError(error))
  }
}

function nothingOf(path: string, what: Pick<ReadFile, 'kind' | 'id'>, text: string, why: Finding): ReadFile {
  const tree = { text, root: null, problems: [], comments: [] }
  const { record, fields } = understood(what.kind, tree)
  const findings = [why]
  return { path, ...what, tree, record: record as ReadFile['record'], fields, readFindings: () => findings }
}

/** The schema is held against a file only when somebody asks what was found: to compare 500 panels nobody does. */
function read(what: Pick<ReadFile, 'path' | 'kind' | 'id'>, typed: Tree, currency: string | undefined): ReadFile {
  const { kind } = what
  const hazards = hazardsOf(typed)
  const info = schemas[kind]
  const { tree, findings: words } = info ? asMeant(info, typed) : { tree: typed, findings: [] }
  const { record, fields, findings, unread } = understood(kind, tree, hazards.spoiled, currency)
  const shape = unread.length > 0 ? shapeOf(kind) : undefined
  const parted = shape && readMisread(typed, unread, shape)
  if (parted) return read(what, parted, currency)
  let found: readonly Finding[] | undefined
  return {
    ...what,
    tree,
    record: record as ReadFile['record'],
    fields,
    // a getter would be a hidden class of its own, with all that it holds, until the next full collection
    readFindings: () => (found ??= findingsOf(kind, tree, { hazards, words, quantities: findings })),
  }
}

/** What the readers found each for itself. */
interface Read {
  readonly hazards: ReturnType<typeof hazardsOf>
  readonly words: readonly Finding[]
  readonly quantities: readonly Finding[]
}

function findingsOf(kind: RecordKind, tree: Tree, { hazards, words, quantities }: Read): readonly Finding[] {
  const unreadable = tree.root === null && hazards.findings.length > 0
  const nothing = tree.root === null && !unreadable
  const others = quantities.flatMap(({ corrections }) =>
    corrections.flatMap(({ also = [] }) => also.map((one) => one.pointer)),
  )
  const reported = new Set(hazards.findings.map(({ pointer }) => pointer))
  const shape = (unreadable || nothing ? [] : shapeFindings()).filter(
    ({ rule, pointer }) => rule !== reading.wrongKind.id || !reported.has(pointer),
  )
  // a line in the wrong column of which it is known where it belongs
  const columns = new Set(
    hazards.findings.flatMap(({ rule, span }) => (rule === reading.syntax.id ? [span.start] : [])),
  )
  const isMoved = ({ rule, corrections, span }: Finding) =>
    rule === reading.misplacedField.id && corrections.length > 0 && columns.has(span.start)
  const moved = new Set(shape.filter(isMoved).map(({ span }) => span.start))
  return [
    ...hazards.findings.filter(({ rule, span }) => rule !== reading.syntax.id || !moved.has(span.start)),
    ...words,
    ...shape.map((one) => (isMoved(one) ? { ...one, severity: reading.syntax.severity } : one)),
    ...quantities,
    ...(nothing
      ? [
          finding(
            reading.missingField,
            { pointer: '', span: { start: 0, end: 0 } },
            phrase`The ${named(kind)} record is empty; wattproof new ${kind} begins one.`,
          ),
        ]
      : []),
  ]

  function shapeFindings(): readonly Finding[] {
    try {
      return schemaFindings(kind, tree, new Set([...hazards.swallowed, ...others]))
    } catch (error) {
      return [internalError(error)]
    }
  }
}

function understood(kind: RecordKind, tree: Tree, spoiled: ReadonlySet<string> = new Set(), currency?: string) {
  const info = schemas[kind]
  return info
    ? readRecord(info, tree.root, { tree, spoiled, currency })
    : { record: {}, fields: new Map(), findings: [], unread: [] }
}
