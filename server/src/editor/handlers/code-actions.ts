import type { CodeAction, Diagnostic, TextEdit, WorkspaceEdit } from 'vscode-languageserver'
import { CodeActionKind } from '../lsp.ts'
import type { Correction, Finding } from '../../findings/finding.ts'
import { alternatives } from '../../quantities/format.ts'
import type { Measure } from '../../records/field.ts'
import { setScalar } from '../../text/edits.ts'
import type { Edit, Span } from '../../text/span.ts'
import { fixAll } from '../capabilities.ts'
import type { Here } from '../here.ts'
import { isWithin, spotAt } from '../spot.ts'
import { toTextEdit } from '../to-protocol.ts'
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
      title: `${one.text}: ${one.why}`,
      edit: edit(here, one.edits),
      ...(corrections.length === 1 && { isPreferred: true }),
    })),
    ...[removal(here, finding), acceptance(here, finding)].flatMap((one) => (one ? [{ ...about, ...one }] : [])),
  ]
}

function conversions(here: Here, offset: number): CodeAction[] {
  const { checked } = here
  const spot = spotAt(checked, offset)
  const { quantity } = ((spot && checked.fields.get(spot.pointer)) ?? {}) as Partial<Measure>
  if (!spot || !quantity) return []
  return alternatives(quantity).map(({ text }) => ({
    title: `Write as ${text}`,
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

/** Only what keeps the meaning; two fixes of the same characters wait for the next time. */
function allSafe(here: Here): CodeAction[] {
  const safe: Edit[] = []
  for (const { corrections } of here.checked.findings) {
    const fix = corrections.find(({ certainty }) => certainty === 'same')
    if (fix && fix.edits.every((one) => safe.every((other) => isApart(one.span, other.span)))) safe.push(...fix.edits)
  }
  if (safe.length === 0) return []
  return [{ title: 'Fix all that keeps its meaning', kind: fixAll, edit: edit(here, safe) }]
}

const isApart = (a: Span, b: Span) => !isWithin(a, b.start) && !isWithin(a, b.end) && !isWithin(b, a.start)

function edit({ uri, checked, client }: Here, edits: Correction['edits']): WorkspaceEdit {
  return changes(
    uri,
    edits.map((one) => toTextEdit(checked.tree, one)),
    client.documentChanges,
  )
}

const changes = (uri: string, edits: TextEdit[], versioned: boolean): WorkspaceEdit =>
  versioned ? { documentChanges: [{ textDocument: { uri, version: null }, edits }] } : { changes: { [uri]: edits } }
