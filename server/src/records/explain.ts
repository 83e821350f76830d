import { named, phrase, type Phrase } from '../wording/phrase.ts'
import type { Finding } from '../findings/finding.ts'
import { finding, type Proposed } from '../findings/make.ts'
import { setScalar } from '../text/edits.ts'
import { keySpanOrValue, nodeAtPointer } from '../text/tree-queries.ts'
import type { Node, Tree } from '../text/tree.ts'
import { reading } from './facts.ts'
import type { FieldInfo } from './field-info.ts'
import { infoAt, fieldName } from './info-at.ts'
import { asList, meantBy } from './meant-by.ts'
import { nearest } from './nearest.ts'
import type { Complaint } from './validators.generated.js'

/**
 * What a schema validator says of one value, in a sentence. Unknown and missing fields are reported elsewhere, and of two
 * complaints about one value only the plainer one is.
 */
export function explain(
  { instancePath: pointer, keyword, params }: Complaint,
  root: FieldInfo,
  tree: Tree,
): Finding | null {
  const node = nodeAtPointer(tree, pointer)
  const info = infoAt(root, pointer)
  const place = { pointer, span: keySpanOrValue(tree, pointer) }
  const name = info ? fieldName(info) : pointer
  const typed = node?.kind === 'scalar' ? node.text : ''

  switch (keyword) {
    case 'enum':
      return node?.kind === 'scalar' ? notAChoice(node.text, info, place, tree) : null
    case 'const':
      if (node?.kind !== 'scalar') return null
      return finding(
        reading.wrongFormat,
        place,
        typed === '1'
          ? phrase`The format is a number: write 1 without quotes.`
          : phrase`This is format ${shorten(typed)}, and only format 1 is known.`,
        {
          corrections: [
            typed === '1'
              ? {
                  pointer,
                  text: '1',
                  why: phrase`without quotes`,
                  certainty: 'guess',
                  edits: [{ span: node.span, text: '1' }],
                }
              : correction(tree, pointer, '1', phrase`the format that is known`),
          ],
        },
      )
    case 'type':
      return wrongKind(node, info, place, tree)
    case 'pattern':
      return finding(reading.wrongText, place, phrase`${name} "${shorten(typed)}" is not written ${spelling(info)}.`, {
        corrections: node ? meantBy(node, info, tree) : [],
      })
    case 'minimum':
    case 'maximum': {
      const limit = String(params.limit)
      const sentence =
        keyword === 'minimum'
          ? phrase`${name} ${typed} is below ${limit}.`
          : phrase`${name} ${typed} is above ${limit}.`
      return finding(reading.outOfRange, place, sentence)
    }
    case 'minItems':
    case 'maxItems': {
      const has = node?.kind === 'list' ? node.items.length : 0
      return finding(
        reading.outOfRange,
        place,
        phrase`${name} has ${has} values, where ${String(params.limit)} are expected.`,
      )
    }
    default:
      return null
  }
}

type Place = Parameters<typeof finding>[1]

function notAChoice(typed: string, info: FieldInfo | null, place: Place, tree: Tree): Finding {
  const words = (info?.choices ?? []).map((c) => c.value)
  const near = nearest(typed, words)
  const list =
    words.length <= 6 ? words.join(', ') : phrase`${words.slice(0, 6).join(', ')} and ${words.length - 6} more`
  const mean = near ? phrase` Did you mean ${near}?` : ''
  const name = info ? fieldName(info) : place.pointer
  return finding(reading.notAChoice, place, phrase`${name} "${shorten(typed)}" is none of ${list}.${mean}`, {
    corrections: near ? [correction(tree, place.pointer, near, phrase`the nearest known word`)] : [],
  })
}

function wrongKind(node: Node | null, info: FieldInfo | null, place: Place, tree: Tree): Finding | null {
  // a word that is no choice or no format is reported as that; a text may look like a number
  if (node?.kind === 'scalar' && (info?.choices || info?.key === 'format' || info?.type === 'text')) return null
  const name = !info?.key
    ? phrase`The ${named((info?.title ?? 'value').toLowerCase())}`
    : isCollection(info)
      ? info.key
      : fieldName(info)
  if (node === null) return finding(reading.emptyField, place, phrase`${name} has no value.`)
  return finding(reading.wrongKind, place, phrase`${name} is ${aOf(node, info)}; ${expected(info)}.`, {
    corrections: asList(node, info, tree) ?? meantBy(node, info, tree),
  })
}

const isCollection = ({ type }: FieldInfo) => type === 'group' || type === 'map' || type === 'list'

function correction(tree: Tree, pointer: string, text: string, why: Phrase): Proposed {
  return { pointer, text, why, certainty: 'guess', edits: [setScalar(tree, pointer, text)] }
}

function aOf(node: Node, info: FieldInfo | null): string | Phrase {
  if (node.kind === 'map') return phrase`a group of fields`
  if (node.kind === 'list') return phrase`a list`
  const typed = `"${shorten(node.text)}"`
  const isQuoted = node.style === 'single' || node.style === 'double'
  return isQuoted && info?.type && plainTypes.has(info.type) ? phrase`the text ${typed}, in quotes` : typed
}

/** What would not be itself in quotes. */
const plainTypes: ReadonlySet<string> = new Set(['boolean', 'integer', 'number'])

const shorten = (text: string) => (text.length <= 40 ? text : `${text.slice(0, 39)}…`)

/** `a number with a unit is expected, such as 2.2 kg` */
function expected(info: FieldInfo | null): Phrase {
  const example = info?.examples?.[0] ? phrase`, such as ${info.examples[0].replace(/[.]$/, '')}` : ''
  switch (info?.type) {
    case 'quantity':
      return phrase`a number with a unit is expected${example}`
    case 'integer':
      return phrase`a whole number is expected${example}`
    case 'number':
      return phrase`a number is expected${example}`
    case 'choice':
      return phrase`one of ${(info.choices ?? []).map((c) => c.value).join(', ')} is expected`
    case 'date':
      return phrase`a date is expected${example}`
    case 'group':
    case 'map': {
      const keys = (info.fields ?? []).map((f) => f.key)
      const some = keys.length > 4 ? [...keys.slice(0, 4), '…'] : keys
      return some.length > 0
        ? phrase`a group of fields is expected (${some.join(', ')})`
        : phrase`a group of fields is expected`
    }
    case 'list':
      return phrase`a list is expected, in [ ] or one item a line after a dash`
    case 'boolean':
      return phrase`true or false is expected`
    case 'reference':
      return phrase`the id of a ${named(info.record!)} record is expected, or its fields`
    default:
      return phrase`a text is expected${example}`
  }
}

const spelling = (info: FieldInfo | null): Phrase => {
  const example = info?.examples?.[0] ?? ''
  return info?.type === 'date' ? phrase`as year-month-day, like ${example}` : phrase`like ${example}`
}
