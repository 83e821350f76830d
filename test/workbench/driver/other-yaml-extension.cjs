// Reports an unclosed bracket, as any checker of YAML does.
const { Diagnostic, Range, languages, workspace } = require('vscode')

exports.activate = ({ subscriptions }) => {
  const findings = languages.createDiagnosticCollection('yaml')
  const look = (document) => {
    if (document.languageId !== 'yaml') return
    const at = document.getText().search(/\[[^\]]*$/)
    const place = document.positionAt(at)
    const finding = new Diagnostic(new Range(place, place.translate(0, 1)), 'Flow sequence must end with a ]')
    finding.source = 'yaml'
    findings.set(document.uri, at < 0 ? [] : [finding])
  }
  subscriptions.push(
    findings,
    workspace.onDidOpenTextDocument(look),
    workspace.onDidChangeTextDocument((e) => look(e.document)),
  )
  workspace.textDocuments.forEach(look)
}
