import type { CodeLens } from 'vscode-languageserver'
import { sayIn } from '../../wording/phrase.ts'
import type { Here } from '../here.ts'
import { toRange } from '../to-protocol.ts'
import { missingIn, wordsOf } from './missing.ts'
import { nameRange, useLocation } from './references.ts'

/** Above a record that systems use: in how many. A command only where the client has one for it. */
export const codeLenses = (here: Here): CodeLens[] => [...usedIn(here), ...notGiven(here)]

/** What the record does not say, and what that costs is a click away. */
function notGiven(here: Here): CodeLens[] {
  const { checked, client, uri, bundle } = here
  const missing = missingIn(here)
  if (missing.length === 0) return []
  const range = nameRange(checked)
  const words = missing.map(({ field }) => wordsOf(field))
  const say = sayIn(bundle)
  const title = say`not given: ${words.slice(0, 4).join(', ')}${words.length > 4 ? say` and ${words.length - 4} more` : ''}`
  const show = client.options.showReferences
  if (!show) return [{ range, command: { title, command: '' } }]
  const places = missing.map(({ finding }) => ({ uri, range: toRange(checked.tree, finding.span) }))
  return [{ range, command: { title, command: show, arguments: [uri, range.start, places] } }]
}

function usedIn(here: Here): CodeLens[] {
  const { checked, library, client, uri, bundle } = here
  const say = sayIn(bundle)
  const isUsable = checked.kind !== 'system' && checked.kind !== 'library'
  if (!isUsable) return []
  const uses = library.usesOf(checked)
  const systems = new Set(uses.flatMap(({ file }) => (file.kind === 'system' ? [file.path] : []))).size
  if (systems === 0) return []
  const title = systems === 1 ? say`used in 1 system` : say`used in ${systems} systems`
  const range = nameRange(checked)
  const show = client.options.showReferences
  if (!show) return [{ range, command: { title, command: '' } }]
  const places = uses.map((use) => useLocation(here, use))
  return [{ range, command: { title, command: show, arguments: [uri, range.start, places] } }]
}
