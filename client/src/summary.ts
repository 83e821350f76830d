import {
  DiagnosticSeverity,
  Disposable,
  StatusBarAlignment,
  l10n,
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
  item.tooltip = [
    l10n.t('In this record: {0}.', said),
    l10n.t('In all records: {0}.', inWords(everywhere)),
    l10n.t('Click for the list.'),
  ].join('\n')
  item.accessibilityInformation = { label: l10n.t('Wattproof: {0} in this record', said) }
  item.show()
}

const ours = (all: readonly Diagnostic[]) => all.filter(({ source }) => source === 'wattproof')

const isGrave = ({ severity }: Diagnostic) => severity <= DiagnosticSeverity.Warning

/** `1 error, 2 warnings`, or `no findings`. */
function inWords(findings: readonly Diagnostic[]): string {
  const of = (wanted: DiagnosticSeverity) => findings.filter(({ severity }) => severity === wanted).length
  const [errors, warnings, hints] = [
    of(DiagnosticSeverity.Error),
    of(DiagnosticSeverity.Warning),
    of(DiagnosticSeverity.Hint),
  ]
  const information = of(DiagnosticSeverity.Information)
  const counts = [
    ...(errors === 0 ? [] : [errors === 1 ? l10n.t('1 error') : l10n.t('{0} errors', errors)]),
    ...(warnings === 0 ? [] : [warnings === 1 ? l10n.t('1 warning') : l10n.t('{0} warnings', warnings)]),
    ...(information === 0 ? [] : [l10n.t('{0} information', information)]),
    ...(hints === 0 ? [] : [hints === 1 ? l10n.t('1 hint') : l10n.t('{0} hints', hints)]),
  ]
  return counts.length === 0 ? l10n.t('no findings') : counts.join(', ')
}
