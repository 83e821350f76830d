import type { RecordKind } from './field-info.ts'

const recordFile = /^(?!\.[_#])(.+)\.(panel|controller|battery|climate|system)\.(?:ya?ml|json)$/is
const settingsFile = /^wattproof\.ya?ml$/i

/**
 * What a file is, recognised by its name alone: the last two suffixes, in any case. What macOS and Emacs leave beside a file (`._a`, `.#a`) is none.
 *
 * @param path  a path or an address with `/` or `\` between folders
 * @returns     the kind and the id (the name before the suffixes), or null for a file that is none of ours
 */
export function recordOfPath(path: string): { readonly kind: RecordKind; readonly id: string } | null {
  const name = path.slice(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1)
  const [, id, kind] = recordFile.exec(name) ?? []
  if (id && kind) return { kind: kind.toLowerCase() as RecordKind, id }
  return settingsFile.test(name) ? { kind: 'library', id: 'wattproof' } : null
}
