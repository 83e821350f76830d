import { phrase } from '../../wording/phrase.ts'
import { lineAround } from '../lines.ts'
import { childPointer } from '../pointer.ts'
import { shortened } from '../shortened.ts'
import { entriesOf } from '../tree-queries.ts'
import type { Span } from '../span.ts'
import type { Entry, MapNode, Tree } from '../tree.ts'
import { hazard, yamlSource, type Hazard, type HazardRule } from './hazard.ts'
import { strays, withoutSpace } from './strays.ts'

export const missingSpace: HazardRule = {
  id: 'colon-without-space',
  severity: 'error',
  reason:
    'A colon separates a field from its value only when a space follows; without one YAML takes the whole line for a word.',
  source: yamlSource('7.3.3'),
  find: (tree) => [
    ...strays(tree)
      .filter(({ kind }) => kind === 'no-space')
      .map(({ entry, map }) => {
        const { key, keySpan, pointer } = entry
        const own = childPointer(map.pointer, withoutSpace.exec(key)![1]!)
        // the field is here, and not missed besides
        return glued(key, keySpan, map.pointer, [pointer, ...(has(map, own) ? [] : [own])], [])
      }),
    ...onlyChildren(tree),
    ...entriesOf(tree).flatMap(({ entry, map }) => beforeBracket(tree, entry, map)),
  ],
}

/** `stc:` with nothing but `voc:22.1 V` below it: a text where a map was meant. */
function onlyChildren(tree: Tree): Hazard[] {
  const root = tree.root?.kind === 'scalar' ? [{ value: tree.root, pointer: '', colon: -1 }] : []
  const words = entriesOf(tree)
    .map(({ entry }) => entry)
    .filter(({ value }) => value?.kind === 'scalar' && value.text.includes(':'))
  return [...root, ...words].flatMap(({ value, pointer, colon }) => {
    if (value?.kind !== 'scalar' || value.style !== 'plain' || !withoutSpace.test(value.text)) return []
    const below = pointer === '' || /[\r\n]/.test(tree.text.slice(colon ?? 0, value.span.start))
    return below ? [glued(value.text, value.span, pointer, [], [pointer])] : []
  })
}

const has = ({ entries }: MapNode, pointer: string) => entries.some((entry) => entry.pointer === pointer)

/** `size:{ length: 1190 mm }`: a group on one line, of which YAML takes all before its first colon with a space for a name. */
function beforeBracket({ text }: Tree, { key, keySpan, pointer, colon }: Entry, map: MapNode): Hazard[] {
  const [, name] = /^([A-Za-z_][\w-]*):[{[]/.exec(key) ?? []
  if (name === undefined || colon === null || map.flow) return []
  const { end } = lineAround(text, keySpan.start)
  const line = text.slice(keySpan.start, end).split(' #')[0]!.trimEnd()
  const own = childPointer(map.pointer, name)
  if (!withoutSpace.test(line)) return []
  return [
    {
      ...glued(line, keySpan, map.pointer, [pointer, ...(has(map, own) ? [] : [own])], [pointer]),
      explains: [{ start: keySpan.start, end }],
    },
  ]
}

function glued(typed: string, span: Span, parent: string, swallows: string[], spoils: string[]): Hazard {
  const [, key, text] = withoutSpace.exec(typed)!
  const pointer = childPointer(parent, key!)
  const start = span.start + key!.length + 1
  return hazard({
    message: phrase`A space is missing after the colon: write ${key}: ${shortened(text!)}.`,
    pointer,
    span,
    spoils: [pointer, ...spoils],
    swallows,
    fixes: [
      {
        edits: [{ span: { start, end: span.start + typed.length - text!.length }, text: ' ' }],
        why: phrase`a space after the colon`,
        certainty: 'same',
        text: text!,
      },
    ],
  })
}
