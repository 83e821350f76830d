import type { ClientCapabilities, InitializeParams } from 'vscode-languageserver'
import { languageOf, type Bundle, type Language } from '../wording/bundle.ts'
import type { InitializationOptions } from './protocol.ts'

/** What the client can do, as far as an answer depends on it. */
export interface Client {
  readonly options: InitializationOptions
  readonly language: Language
  /** The words of that language, once they are loaded; none for English. */
  readonly bundle?: Bundle | undefined
  readonly markdown: boolean
  /** Asks for findings, and asks again when it is asked to. */
  readonly pull: boolean
  readonly snippets: boolean
  readonly snippetEdits: boolean
  readonly relatedInformation: boolean
  readonly unnecessaryTag: boolean
  /** Address of the page of a rule, with `{rule}` where its id goes; null where there is none or the client shows none. */
  readonly rulePage: string | null
  readonly symbolTree: boolean
  readonly definitionLinks: boolean
  readonly actionLiterals: boolean
  readonly documentChanges: boolean
  readonly renameFiles: boolean
  readonly configuration: boolean
  readonly registersConfiguration: boolean
  readonly registersWatchers: boolean
  readonly workspaceFolders: boolean
  readonly willRename: boolean
  readonly refresh: { readonly hints: boolean; readonly lenses: boolean }
}

/** @param ownRulePage  address of the page of a rule that the host of this server has, with `{rule}` where its id goes */
export function clientOf(
  { capabilities, initializationOptions, locale }: InitializeParams,
  ownRulePage: string | null,
): Client {
  const { textDocument: text, workspace }: ClientCapabilities = capabilities
  const options: InitializationOptions = isObject(initializationOptions) ? initializationOptions : {}
  const formats = text?.hover?.contentFormat ?? []
  const reports = text?.publishDiagnostics
  const edits = workspace?.workspaceEdit
  return {
    options,
    language: languageOf(options.language ?? locale),
    markdown: formats.includes('markdown'),
    // a client that cannot be asked to pull again would keep findings that another file has made stale
    pull: text?.diagnostic !== undefined && workspace?.diagnostics?.refreshSupport === true,
    snippets: text?.completion?.completionItem?.snippetSupport === true,
    snippetEdits: edits?.snippetEditSupport === true && edits.documentChanges === true,
    relatedInformation: (text?.diagnostic ?? reports)?.relatedInformation ?? reports?.relatedInformation ?? false,
    unnecessaryTag: ((text?.diagnostic ?? reports)?.tagSupport ?? reports?.tagSupport)?.valueSet.includes(1) ?? false,
    rulePage:
      (text?.diagnostic ?? reports)?.codeDescriptionSupport || reports?.codeDescriptionSupport
        ? (options.rulePage ?? ownRulePage)
        : null,
    symbolTree: text?.documentSymbol?.hierarchicalDocumentSymbolSupport === true,
    definitionLinks: text?.definition?.linkSupport === true,
    actionLiterals: text?.codeAction?.codeActionLiteralSupport !== undefined,
    documentChanges: edits?.documentChanges === true,
    renameFiles: edits?.resourceOperations?.includes('rename') ?? false,
    configuration: workspace?.configuration === true,
    registersConfiguration: workspace?.didChangeConfiguration?.dynamicRegistration === true,
    registersWatchers: workspace?.didChangeWatchedFiles?.dynamicRegistration === true,
    workspaceFolders: workspace?.workspaceFolders === true,
    willRename: workspace?.fileOperations?.willRename === true,
    refresh: {
      hints: workspace?.inlayHint?.refreshSupport === true,
      lenses: workspace?.codeLens?.refreshSupport === true,
    },
  }
}

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null
