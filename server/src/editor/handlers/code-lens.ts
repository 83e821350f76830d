import type { CodeLens } from 'vscode-languageserver'
import type { Here } from '../here.ts'
import { nameRange, useLocation } from './references.ts'

/** Above a record that systems use: in how many. A command only where the client has one for it. */
export function codeLenses(here: Here): CodeLens[] {
  const { checked, library, client, uri } = here
  const isUsable = checked.kind !== 'system' && checked.kind !== 'library'
  if (!isUsable) return []
  const uses = library.usesOf(checked)
  const systems = new Set(uses.flatMap(({ file }) => (file.kind === 'system' ? [file.path] : []))).size
  if (systems === 0) return []
  const title = systems === 1 ? 'used in 1 system' : `used in ${systems} systems`
  const range = nameRange(checked)
  const show = client.options.showReferences
  if (!show) return [{ range, command: { title, command: '' } }]
  const places = uses.map((use) => useLocation(here, use))
  return [{ range, command: { title, command: show, arguments: [uri, range.start, places] } }]
}
