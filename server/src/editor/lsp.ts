/** The protocol's words that are values, at one place: each further import of the package copies all of it when it starts. */
export {
  CancellationToken,
  CodeActionKind,
  CompletionItemKind,
  CompletionTriggerKind,
  DidChangeConfigurationNotification,
  DidChangeWatchedFilesNotification,
  ErrorCodes,
  InsertTextFormat,
  ResponseError,
  SymbolKind,
  TextDocuments,
  TextDocumentSyncKind,
} from 'vscode-languageserver'
