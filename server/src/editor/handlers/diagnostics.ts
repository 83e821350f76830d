import type { Diagnostic } from 'vscode-languageserver'
import type { Finding } from '../../findings/finding.ts'
import type { Here } from '../here.ts'
import { toDiagnostic, type Text } from '../to-protocol.ts'

/** What YAML itself complains about; other extensions say it too. */
const syntaxRule = 'yaml-syntax'

/** @param tree  of the file, or no more than its text */
export function diagnostics(
  { uri, client, library, uriOf }: Pick<Here, 'uri' | 'client' | 'library' | 'uriOf'>,
  tree: Text,
  findings: readonly Finding[],
): Diagnostic[] {
  return findings
    .filter(({ rule }) => !(client.options.syntaxElsewhere && rule === syntaxRule))
    .map((finding) => toDiagnostic(finding, tree, uri, client, where))

  function where(path: string) {
    const file = library.file(path)
    return file ? { uri: uriOf(path), tree: file.tree } : null
  }
}
