import type { Finding } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import { readTree } from '../text/read-tree.ts'
import { reading } from './facts.ts'
import { hazardsOf } from './hazards.ts'
import { recordOfPath } from './kinds.ts'
import type { ReadFile } from './read-file.ts'
import { readRecord } from './read-record.ts'
import { schemaFindings } from './schema-findings.ts'
import { schemas } from './schemas.generated.ts'

/**
 * Reads one file: YAML hazards first, then the schema, then the quantities from their printed text.
 *
 * @param currency  ISO 4217 code of a bare price
 * @returns         null when the name says that it is none of ours
 */
export function readFile(path: string, text: string, currency?: string): ReadFile | null {
  const what = recordOfPath(path)
  if (!what) return null
  const tree = readTree(text)
  const hazards = hazardsOf(tree)
  const info = schemas[what.kind]
  const empty = { record: {}, fields: new Map(), findings: [] as Finding[] }
  const { record, fields, findings } = info
    ? readRecord(info, tree.root, { tree, spoiled: hazards.spoiled, currency })
    : empty
  const unreadable = tree.root === null && hazards.findings.length > 0
  const nothing = tree.root === null && !unreadable
  const told = new Set(hazards.findings.map(({ pointer }) => pointer))
  const readFindings = [
    ...hazards.findings,
    ...(unreadable || nothing ? [] : schemaFindings(what.kind, tree, hazards.swallowed)).filter(
      ({ rule, pointer }) => rule !== reading.wrongKind.id || !told.has(pointer),
    ),
    ...findings,
    ...(nothing
      ? [
          finding(
            reading.missingField,
            { pointer: '', span: { start: 0, end: 0 } },
            `The ${what.kind} record is empty.`,
          ),
        ]
      : []),
  ]
  return { path, ...what, tree, record, fields, readFindings } as ReadFile
}
