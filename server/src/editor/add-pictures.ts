import type { Connection } from 'vscode-languageserver'
import { keySpanOrValue, nodeAtPointer, pathAtOffset } from '../text/tree-queries.ts'
import { parentPointer } from '../text/pointer.ts'
import { about } from './about.ts'
import { inBackground } from './caught.ts'
import type { Here } from './here.ts'
import { createPictures, type Pictures } from './pictures.ts'
import {
  comparisonRequest,
  fieldRequest,
  pageRequest,
  picturesRequest,
  placeRequest,
  changedNotification,
  type ComparisonParams,
  type FieldParams,
  type FieldResult,
  type PageParams,
  type PlaceParams,
  type PlaceResult,
} from './protocol.ts'
import type { Session } from './session.ts'
import { toOffset, toRange } from './to-protocol.ts'

/** Answers what a view beside the editor asks. The program that draws is loaded with the first question. */
export function addPictures(connection: Connection, session: Session, load: () => Pictures): void {
  const pictures = createPictures(load)
  let wanted = false

  connection.onRequest(
    picturesRequest,
    about(connection, session, async (here) => {
      wanted = true
      return pictures.of(here)
    }),
  )
  connection.onRequest(
    comparisonRequest,
    about(connection, session, (here, { surface }: ComparisonParams) => pictures.comparison(here, surface)),
  )
  connection.onRequest(
    pageRequest,
    about(connection, session, (here, params: PageParams) => pictures.page(here, params)),
  )
  connection.onRequest(
    fieldRequest,
    about(connection, session, (here, { position }: FieldParams) =>
      fieldAt(here, toOffset(here.checked.tree, position)),
    ),
  )
  connection.onRequest(
    placeRequest,
    about(connection, session, (here, { field }: PlaceParams) => placeOf(here, field)),
  )
  session.onChange(() => {
    if (wanted) inBackground(connection, () => connection.sendNotification(changedNotification))
  })
}

const fieldAt = ({ checked }: Here, offset: number): FieldResult =>
  pathAtOffset(checked.tree, offset).at(-1)?.pointer ?? null

const panelPrefix = 'panel:'

function placeOf({ uri, path, checked, library, uriOf }: Here, field: string): PlaceResult {
  if (field.startsWith(panelPrefix)) {
    const [file] = library.byId('panel', field.slice(panelPrefix.length), path)
    const start = { line: 0, character: 0 }
    return file ? { uri: uriOf(file.path), range: { start, end: start } } : null
  }
  let pointer = field
  while (pointer !== '' && !nodeAtPointer(checked.tree, pointer)) pointer = parentPointer(pointer)
  return pointer === '' ? null : { uri, range: toRange(checked.tree, keySpanOrValue(checked.tree, pointer)) }
}
