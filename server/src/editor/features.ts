import type { Connection } from 'vscode-languageserver'
import { caught } from './caught.ts'
import { codeActions } from './handlers/code-actions.ts'
import { codeLenses } from './handlers/code-lens.ts'
import { completionFor } from './handlers/completion.ts'
import { hover } from './handlers/hover.ts'
import { explainHint, inlayHints, type HintData } from './handlers/inlay-hints.ts'
import { documentLinks } from './handlers/links.ts'
import { definition, highlights, references } from './handlers/references.ts'
import { prepareRename, rename, renamedFiles } from './handlers/rename.ts'
import { documentSymbols, workspaceSymbols } from './handlers/symbols.ts'
import type { Here } from './here.ts'
import { CompletionTriggerKind } from './lsp.ts'
import type { Session } from './session.ts'
import { toOffset, toSpan } from './to-protocol.ts'

interface About {
  readonly textDocument: { readonly uri: string }
}
interface AtCursor extends About {
  readonly position: { readonly line: number; readonly character: number }
}

/** Hands each request to its feature. One that fails is logged and answered with nothing; the server goes on. */
export function addFeatures(connection: Connection, session: Session): void {
  const { settings, workspace } = session

  connection.onHover(atCursor((here, offset) => hover(here, offset)))
  connection.onCompletion(
    atCursor((here, offset, { context }) =>
      completionFor(here, offset, context?.triggerKind ?? CompletionTriggerKind.Invoked),
    ),
  )
  connection.onDefinition(atCursor((here, offset) => definition(here, offset)))
  connection.onReferences(atCursor((here, offset, { context }) => references(here, offset, context.includeDeclaration)))
  connection.onDocumentHighlight(atCursor((here, offset) => highlights(here, offset)))
  connection.onPrepareRename(
    atCursor(async (here, offset) => {
      await session.indexed()
      return prepareRename(here, offset)
    }),
  )
  connection.onRenameRequest(
    atCursor(async (here, offset, { newName }) => {
      await session.indexed() // or places that name the record would be missed
      return rename(here, offset, newName)
    }),
  )

  connection.onDocumentSymbol(about((here) => documentSymbols(here)))
  connection.onDocumentLinks(about((here) => documentLinks(here)))
  connection.onCodeAction(
    about((here, { range, context }) =>
      codeActions(here, toSpan(here.checked.tree, range), context.diagnostics, context.only),
    ),
  )
  connection.onCodeLens(about(async (here) => ((await settings.of(here.uri)).codeLens ? codeLenses(here) : [])))
  connection.languages.inlayHint.on(
    about(async (here, { range }) => inlayHints(here, toSpan(here.checked.tree, range), await settings.of(here.uri))),
  )
  connection.languages.inlayHint.resolve(
    caught(
      connection,
      (hint) => {
        const here = session.here((hint.data as HintData | undefined)?.uri ?? '')
        return here ? explainHint(here, hint) : hint
      },
      (hint) => hint,
    ),
  )

  connection.onWorkspaceSymbol(
    caught(connection, ({ query }) => workspaceSymbols(workspace, query, session.uriOf), nothing),
  )
  connection.workspace.onWillRenameFiles(
    caught(
      connection,
      ({ files }) => {
        const moved = files.flatMap(({ oldUri, newUri }) => {
          const from = session.pathOf(oldUri)
          const to = session.pathOf(newUri)
          return from !== null && to !== null ? [{ from, to }] : []
        })
        return renamedFiles(workspace, moved, session.uriOf, session.client)
      },
      nothing,
    ),
  )

  function atCursor<P extends AtCursor, R>(answer: (here: Here, offset: number, params: P) => R) {
    return about((here, params: P) => answer(here, toOffset(here.checked.tree, params.position), params))
  }

  function about<P extends About, R>(answer: (here: Here, params: P) => R) {
    return caught(
      connection,
      (params: P) => {
        const here = session.here(params.textDocument.uri)
        return here ? answer(here, params) : null
      },
      nothing,
    )
  }
}

const nothing = () => null
