import type { Diagnostic } from 'vscode-languageserver'
import type { Finding } from '../../findings/finding.ts'
import type { Here } from '../here.ts'
import { toDiagnostic } from '../to-protocol.ts'

/** What YAML itself complains about; other extensions say it too. */
const syntaxRule = 'yaml-syntax'

export function diagnostics(
  {
    checked,
    uri,
    client,
    library,
    uriOf,
  }: Pick<Here, 'uri' | 'client' | 'library' | 'uriOf'> & {
    readonly checked: { readonly tree: Pick<Here['checked']['tree'], 'text'> }
  },
  findings: readonly Finding[],
): Diagnostic[] {
  return findings
    .filter(({ rule }) => !(client.options.syntaxElsewhere && rule === syntaxRule))
    .map((finding) => toDiagnostic(finding, checked.tree, uri, client, where))

  function where(path: string) {
    const file = library.file(path)
    return file ? { uri: uriOf(path), tree: file.tree } : null
  }
}
