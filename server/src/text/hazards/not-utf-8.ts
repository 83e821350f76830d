import { phrase } from '../../wording/phrase.ts'
import { foreignEncoding } from '../encoding.ts'
import { inventory } from '../tree-queries.ts'
import { hazard, type HazardRule } from './hazard.ts'

export const notUtf8: HazardRule = {
  id: 'not-utf-8',
  severity: 'error',
  reason: 'Records are UTF-8; in another encoding the signs beyond ASCII, such as °, or the whole file cannot be read.',
  source: 'RFC 8259, section 8.1 (JSON); YAML 1.2.2, section 5.2, which recommends it',
  find: (tree) => {
    if (tree.problems.some(({ code }) => code === 'no-text')) return []
    const encoding = foreignEncoding(tree.text)
    const start = encoding ? 0 : tree.text.indexOf('\ufffd')
    if (start < 0) return []
    const message = encoding
      ? phrase`The file is in ${encoding} and was not read: save it as UTF-8.`
      : phrase`A character here is not UTF-8, perhaps Windows-1252 or Latin-1: save the file as UTF-8, and type it again.`
    const span = encoding ? tree.problems[0]!.span : { start, end: start + 1 }
    const spoils = inventory(tree).scalars.flatMap(({ text, pointer }) => (text.includes('\ufffd') ? [pointer] : []))
    return [hazard({ message, pointer: '', span, spoils })]
  },
}
