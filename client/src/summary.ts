import {
  DiagnosticSeverity,
  Disposable,
  StatusBarAlignment,
  languages,
  window,
  type Diagnostic,
  type StatusBarItem,
} from 'vscode'
import { isRecord } from './records.ts'

/** What is found in the record that is open, in the status bar; what is found in all of them behind it. A click leads to the list. */
export function showSummary(): Disposable {
  const item = window.createStatusBarItem('wattproof.summary', StatusBarAlignment.Left, 1)
  item.name = 'Wattproof'
  item.command = 'workbench.actions.view.problems'
  show(item)
  return Disposable.from(
    item,
    window.onDidChangeActiveTextEditor(() => show(item)),
    languages.onDidChangeDiagnostics(() => show(item)),
  )
}

function show(item: StatusBarItem): void {
  const open = window.activeTextEditor?.document.uri
  if (!open || !isRecord(open.path)) return item.hide()
  const here = ours(languages.getDiagnostics(open))
  const everywhere = languages.getDiagnostics().flatMap(([, all]) => ours(all))
  const said = inWords(here)
  item.text = `$(${here.some(isGrave) ? 'warning' : 'pass'}) Wattproof: ${said}`
  item.tooltip = `In this record: ${said}.\nIn all records: ${inWords(everywhere)}.\nClick for the list.`
  item.accessibilityInformation = { label: `Wattproof: ${said} in this record` }
  item.show()
}

const ours = (all: readonly Diagnostic[]) => all.filter(({ source }) => source === 'wattproof')

const isGrave = ({ severity }: Diagnostic) => severity <= DiagnosticSeverity.Warning

/** `1 error, 2 warnings`, or `no findings`. */
function inWords(findings: readonly Diagnostic[]): string {
  const counts = (
    [
      [DiagnosticSeverity.Error, 'error', 'errors'],
      [DiagnosticSeverity.Warning, 'warning', 'warnings'],
      [DiagnosticSeverity.Information, 'information', 'information'],
      [DiagnosticSeverity.Hint, 'hint', 'hints'],
    ] as const
  ).flatMap(([severity, one, many]) => {
    const count = findings.filter((finding) => finding.severity === severity).length
    return count === 0 ? [] : [`${count} ${count === 1 ? one : many}`]
  })
  return counts.length === 0 ? 'no findings' : counts.join(', ')
}
