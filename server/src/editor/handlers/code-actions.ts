import type { CodeAction, Diagnostic, TextEdit, WorkspaceEdit } from 'vscode-languageserver'
import { CodeActionKind } from '../lsp.ts'
import type { Correction, Finding } from '../../findings/finding.ts'
import { alternatives } from '../../quantities/format.ts'
import type { Measure } from '../../records/field.ts'
import { setScalar } from '../../text/edits.ts'
import { lineAround } from '../../text/lines.ts'
import { entryAtPointer, nodeAtPointer } from '../../text/tree-queries.ts'
import { schemas } from '../../records/schemas.generated.ts'
import { skeleton } from '../../records/skeleton.ts'
import { addition, missingIn } from './missing.ts'
import type { Span } from '../../text/span.ts'
import { fixAll } from '../capabilities.ts'
import { named, sayIn } from '../../wording/phrase.ts'
import type { Here } from '../here.ts'
import { spotAt } from '../spot.ts'
import { toTextEdit } from '../to-protocol.ts'
import { everySafeFix } from './fix-all.ts'
import { fromSheet } from './sheet-actions.ts'
import { acceptance, removal } from './accept.ts'

/** Fixes, acceptances, other units, and everything at once that may be fixed without a person looking. */
export function codeActions(
  here: Here,
  span: Span,
  diagnostics: readonly Diagnostic[],
  only?: readonly string[],
): CodeAction[] {
  const wants = (kind: string) => !only || only.some((one) => kind === one || kind.startsWith(`${one}.`))
  const findings = here.checked.findings.filter((one) => one.span.start <= span.end && span.start <= one.span.end)
  return [
    ...(wants(CodeActionKind.QuickFix) ? findings.flatMap((one) => quickFixes(here, one, diagnostics)) : []),
    ...(wants(CodeActionKind.RefactorRewrite)
      ? [...conversions(here, span.start), ...additions(here, span.start)]
      : []),
    ...(wants(CodeActionKind.QuickFix) ? lacking(here, span) : []),
    ...(wants(CodeActionKind.QuickFix) && findings.some(isSafe) ? everySpelling(here) : []),
    ...(only && wants(fixAll) ? allSafe(here) : []),
  ]
}

function quickFixes(here: Here, finding: Finding, all: readonly Diagnostic[]): CodeAction[] {
  const diagnostics = all.filter(
    ({ code, data }) => code === finding.rule && (!data || (data as Finding).pointer === finding.pointer),
  )
  const about = { kind: CodeActionKind.QuickFix, diagnostics }
  const { corrections } = finding
  return [
    ...corrections.map((one) => ({
      ...about,
      title: titleOf(here, one),
      edit: edit(here, one.edits),
      ...(corrections.length === 1 && { isPreferred: true }),
    })),
    ...[removal(here, finding), acceptance(here, finding)].flatMap((one) => (one ? [{ ...about, ...one }] : [])),
  ]
}

/** What is missing on a line; on that of the name, all that is. An empty file lacks everything. */
function lacking(here: Here, span: Span): CodeAction[] {
  const { tree, kind } = here.checked
  const form = schemas[kind]
  if (tree.root === null && tree.problems.length === 0 && form) {
    const end = tree.text.length
    const edits = [{ span: { start: end, end }, text: skeleton(form, new Map(), here.bundle) }]
    return [
      {
        title: sayIn(here.bundle)`Insert the form of a ${named(kind)} record`,
        kind: CodeActionKind.QuickFix,
        edit: edit(here, edits),
      },
    ]
  }
  const name = entryAtPointer(tree, '/name')?.keySpan.start ?? 0
  const line = lineAround(tree.text, span.start)
  const isHere = (at: number) => line.start <= at && at <= line.end
  return missingIn(here)
    .filter(({ finding }) => isHere(name) || isHere(finding.span.start))
    .flatMap((one) => addition(here, one) ?? [])
}

/** What the field would read, and why; what only moves or renames it says that alone. */
function titleOf({ checked: { tree }, bundle }: Here, { pointer, text, why }: Correction): string {
  const node = nodeAtPointer(tree, pointer)
  const isKept = text === '' || (node?.kind === 'scalar' && node.text === text)
  return isKept ? why.charAt(0).toUpperCase() + why.slice(1) : sayIn(bundle)`Use ${text} (${why})`
}

function conversions(here: Here, offset: number): CodeAction[] {
  const { checked } = here
  const spot = spotAt(checked, offset)
  const { quantity } = ((spot && checked.fields.get(spot.pointer)) ?? {}) as Partial<Measure>
  if (!spot || !quantity) return []
  return alternatives(quantity).map(({ text }) => ({
    title: sayIn(here.bundle)`Write as ${text}`,
    kind: CodeActionKind.RefactorRewrite,
    edit: edit(here, [setScalar(checked.tree, spot.pointer, text)]),
  }))
}

const additions = (here: Here, offset: number): CodeAction[] =>
  fromSheet(here, offset).map(({ title, edits }) => ({
    title,
    kind: CodeActionKind.RefactorRewrite,
    edit: edit(here, edits),
  }))

function allSafe(here: Here): CodeAction[] {
  const { edits } = everySafeFix(here)
  return edits.length === 0
    ? []
    : [{ title: sayIn(here.bundle)`Fix all that keeps its meaning`, kind: fixAll, edit: edit(here, edits) }]
}

/** The same from one of them, where there are several. */
function everySpelling(here: Here): CodeAction[] {
  const { count, edits } = everySafeFix(here)
  if (count < 2) return []
  return [
    {
      title: sayIn(here.bundle)`Fix all ${count} spellings in this file`,
      kind: CodeActionKind.QuickFix,
      edit: edit(here, edits),
    },
  ]
}

const isSafe = ({ corrections }: Finding) => corrections.some(({ certainty }) => certainty === 'same')

function edit({ uri, checked, client }: Here, edits: Correction['edits']): WorkspaceEdit {
  return changes(
    uri,
    edits.map((one) => toTextEdit(checked.tree, one)),
    client.documentChanges,
  )
}

const changes = (uri: string, edits: TextEdit[], versioned: boolean): WorkspaceEdit =>
  versioned ? { documentChanges: [{ textDocument: { uri, version: null }, edits }] } : { changes: { [uri]: edits } }
