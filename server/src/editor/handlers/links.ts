import type { DocumentLink } from 'vscode-languageserver'
import type { Here } from '../here.ts'
import { toRange } from '../to-protocol.ts'

/** Fields that name a file beside the record, with the field that says which page of it. */
const links = [{ file: '/datasheet/source', page: '/datasheet/page' }]

/** Opens the sheet that a record was typed from, at its page. */
export function documentLinks({ checked: { fields, tree }, uri, path, library, uriOf }: Here): DocumentLink[] {
  const settings = library.settings(path)?.path
  // without settings nothing says how far the library reaches: records are usually in a folder of their kind beside the sheets
  const root = settings === undefined ? parentOf(parentOf(uri).slice(0, -1)) : parentOf(uriOf(settings))
  return links.flatMap(({ file, page }) => {
    const source = fields.get(file)
    const target = source && resolved(source.text, uri, root)
    if (!target) return []
    const number = fields.get(page)?.text
    const fragment = number && /\.pdf$/i.test(target) ? `#page=${number}` : ''
    return [{ range: toRange(tree, source.span), target: target + fragment, tooltip: 'Open the datasheet' }]
  })
}

/**
 * An address as it is; a path is seen from the record's folder. No link: free text such as "by letter", and a path that leaves the
 * library, for the record may be a stranger's.
 */
function resolved(text: string, uri: string, root: string): string | null {
  if (/^https?:\/\/\S+$/i.test(text)) return text
  if (!/\.\w{2,5}$/.test(text) || /^[a-z][\w+.-]*:/i.test(text)) return null
  const path = text.replaceAll('\\', '/').split('/').map(encodeURIComponent).join('/')
  const target = path.startsWith('/') ? null : normalized(parentOf(uri) + path)
  return target?.startsWith(root) ? target : null
}

const parentOf = (uri: string) => uri.slice(0, uri.lastIndexOf('/') + 1)

function normalized(uri: string): string {
  const scheme = /^[a-z][\w+.-]*:(?:\/\/[^/]*)?/i.exec(uri)?.[0] ?? ''
  const steps: string[] = []
  for (const step of uri.slice(scheme.length).split('/')) {
    if (step === '..' && steps.length > 1) steps.pop()
    else if (step !== '.' && step !== '..') steps.push(step)
  }
  return scheme + steps.join('/')
}
