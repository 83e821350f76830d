// The least that a language server for YAML with a schema can be, to compare with: the protocol library, yaml and ajv.
import { readFileSync } from 'node:fs'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { createConnection, ProposedFeatures, TextDocuments, TextDocumentSyncKind } from 'vscode-languageserver/node'
import { TextDocument } from 'vscode-languageserver-textdocument'
import { LineCounter, parseDocument } from 'yaml'

const validate = new Ajv2020({ strict: false, allErrors: true, validateFormats: false }).compile(
  JSON.parse(readFileSync('schemas/panel.schema.json', 'utf8')),
)
const connection = createConnection(ProposedFeatures.all)
const documents = new TextDocuments(TextDocument)
connection.onInitialize(() => ({ capabilities: { textDocumentSync: TextDocumentSyncKind.Incremental } }))
documents.onDidChangeContent(({ document }) => {
  const lines = new LineCounter()
  const parsed = parseDocument(document.getText(), { lineCounter: lines })
  validate(parsed.toJS())
  const range = { start: { line: 0, character: 0 }, end: { line: 0, character: 1 } }
  const diagnostics = [...parsed.errors, ...(validate.errors ?? [])].map(({ message }) => ({ range, message }))
  connection.sendDiagnostics({ uri: document.uri, diagnostics }).catch(() => process.exit(1))
})
documents.listen(connection)
connection.listen()
