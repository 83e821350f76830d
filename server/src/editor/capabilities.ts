import type { ServerCapabilities } from 'vscode-languageserver'
import { CodeActionKind, TextDocumentSyncKind } from './lsp.ts'
import type { Client } from './client.ts'
import { recordGlobs } from './protocol.ts'

export const fixAll = `${CodeActionKind.SourceFixAll}.wattproof`

/** Folding and formatting are left to YAML's own extension. */
export function capabilitiesFor(client: Client): ServerCapabilities {
  return {
    positionEncoding: 'utf-16',
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental, save: true },
    ...(client.pull && {
      diagnosticProvider: { identifier: 'wattproof', interFileDependencies: true, workspaceDiagnostics: true },
    }),
    hoverProvider: true,
    inlayHintProvider: { resolveProvider: true },
    completionProvider: { triggerCharacters: [':', ' '], resolveProvider: false },
    codeActionProvider: client.actionLiterals && {
      codeActionKinds: [CodeActionKind.QuickFix, CodeActionKind.RefactorRewrite, fixAll],
    },
    documentSymbolProvider: true,
    workspaceSymbolProvider: true,
    documentLinkProvider: { resolveProvider: false },
    documentHighlightProvider: true,
    definitionProvider: true,
    referencesProvider: true,
    renameProvider: { prepareProvider: true },
    codeLensProvider: { resolveProvider: false },
    workspace: {
      ...(client.workspaceFolders && { workspaceFolders: { supported: true, changeNotifications: true } }),
      ...(client.willRename && {
        fileOperations: {
          willRename: { filters: recordGlobs.map((glob) => ({ pattern: { glob, matches: 'file' } })) },
        },
      }),
    },
  }
}
