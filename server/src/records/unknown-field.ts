import { phrase, phraseInWords, type Phrase } from '../wording/phrase.ts'
import type { Finding } from '../findings/finding.ts'
import { finding, type Proposed } from '../findings/make.ts'
import { renameKey } from '../text/edits.ts'
import { groupBy } from '../text/group.ts'
import { childPointer } from '../text/pointer.ts'
import { nodeAtPointer } from '../text/tree-queries.ts'
import type { Entry, MapNode, Tree } from '../text/tree.ts'
import { reading } from './facts.ts'
import type { FieldInfo } from './field-info.ts'
import { columnAt, groupAt, homeOf, type Home } from './misplaced.ts'
import { namelessField } from './nameless-field.ts'
import { nearest } from './nearest.ts'

/** A key that its group does not know. */
interface Unknown {
  readonly entry: Entry
  readonly map: MapNode
  readonly group: FieldInfo | null
}

interface UnknownFields {
  readonly findings: readonly Finding[]
  /** Fields that are not missing: they are there under another name or in another place. */
  readonly meant: ReadonlySet<string>
}

/**
 * Keys that their groups do not know: misspelt, at the wrong level, or of no meaning here. What was not indented under one group
 * is one finding.
 *
 * @param keys  the pointer of a group and a key in it
 */
export function unknownFields(
  keys: readonly { readonly parent: string; readonly key: string }[],
  root: FieldInfo,
  tree: Tree,
  missing: ReadonlySet<string>,
): UnknownFields {
  const unknown = keys.flatMap(({ parent, key }): Unknown[] => {
    const map = nodeAtPointer(tree, parent)
    const entry = map?.kind === 'map' ? map.entries.find((one) => one.key === key) : undefined
    return map?.kind === 'map' && entry ? [{ entry, map, group: groupAt(root, parent) }] : []
  })
  const placed = unknown.map((one) => ({ ...one, home: homeOf(one.entry, one.map, root, tree) }))
  const away = placed.flatMap(({ home, ...one }) => (home ? [{ ...one, home }] : []))
  const runs = groupBy(away, ({ home, map }) => [map.pointer, home.pointer, phraseInWords(home.fix.why)].join('\n'))
  const misspelt = placed.filter(({ home }) => !home).map((one) => misspeltField(one, root, tree, missing))
  return {
    findings: [
      ...[...runs.values()].map((run) => misplacedFields(run, tree, missing)),
      ...misspelt.map((one) => one.finding),
    ],
    meant: new Set([
      ...away.flatMap(({ home, entry }) => [home.pointer, childPointer(home.pointer, entry.key)]),
      ...misspelt.flatMap(({ meant }) => meant),
    ]),
  }
}

type Placed = Unknown & { readonly home: Home }

function misplacedFields(run: readonly Placed[], tree: Tree, missing: ReadonlySet<string>): Finding {
  const [{ entry, map, group, home }] = run as [Placed]
  const [here, there] = [nameOfGroup(group, map), placeOf(home)]
  const names = run.map((one) => one.entry.key)
  const sentence =
    names.length > 1
      ? here
        ? phrase`${someOf(names)} are under ${here}; they belong ${there}.`
        : phrase`${someOf(names)} are at the left margin; they belong ${there}.`
      : (inOtherColumn(run[0]!, tree, there) ?? inOtherGroup(entry.key, here, there))
  const correction: Proposed = { ...home.fix, edits: run.flatMap((one) => one.home.fix.edits) }
  const isMissed = run.some((one) => missing.has(childPointer(one.home.pointer, one.entry.key)))
  return finding(reading.misplacedField, { pointer: entry.pointer, span: entry.keySpan }, sentence, {
    severity: isMissed ? reading.missingField.severity : undefined,
    corrections: [correction],
  })
}

/** Where its line is in the column of another group than the one that it lies in. */
function inOtherColumn(
  { entry: { key, keySpan }, map, group, home }: Placed,
  tree: Tree,
  there: Phrase,
): Phrase | null {
  const isAtMargin = columnAt(tree, keySpan.start) === 0
  if (map.flow || isAtMargin === (map.pointer === '')) return null
  return isAtMargin && home.pointer === ''
    ? phrase`${key} is among the fields of ${group?.key || listOf(map) || phrase`the record`}; it belongs after them.`
    : phrase`${key} is in the wrong place; it belongs ${there}.`
}

const inOtherGroup = (key: string, here: string | undefined, there: Phrase): Phrase =>
  here
    ? phrase`${key} is under ${here}; it belongs ${there}.`
    : phrase`${key} is at the left margin; it belongs ${there}.`

const nameOfGroup = (group: { readonly key: string } | null, map: MapNode) => group?.key || listOf(map)

const placeOf = ({ key }: { readonly key: string }): Phrase => (key ? phrase`under ${key}` : phrase`at the left margin`)

function someOf(names: readonly string[]): Phrase {
  return names.length <= 3
    ? phrase`${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
    : phrase`${names.slice(0, 2).join(', ')} and ${names.length - 2} more`
}

function misspeltField(
  { entry, map, group }: Unknown,
  root: FieldInfo,
  tree: Tree,
  missing: ReadonlySet<string>,
): { readonly finding: Finding; readonly meant: readonly string[] } {
  const { key } = entry
  if (key.trim() === '') return namelessField({ entry, map }, tree, missing)
  const place = { pointer: entry.pointer, span: entry.keySpan }
  const free = (group?.fields ?? []).map((f) => f.key).filter((k) => !map.entries.some((e) => e.key === k))
  const near = nearest(key, free)
  const homes = near ? null : homesOf(key, root)
  if (homes) {
    const sentence = inOtherGroup(key, nameOfGroup(group, map), homes)
    return { finding: finding(reading.misplacedField, place, sentence), meant: [] }
  }
  const mean = near ? phrase` Did you mean ${near}?` : ''
  const sentence = phrase`${group?.key || listOf(map) || phrase`The record`} has no field ${key}, so it is not read.${mean}`
  const meant = near ? [childPointer(map.pointer, near)] : []
  const severity = meant.some((one) => missing.has(one)) ? reading.missingField.severity : undefined
  const why = phrase`the nearest known field`
  const corrections: Proposed[] = near
    ? [{ pointer: entry.pointer, text: near, why, certainty: 'guess', edits: [renameKey(tree, entry.pointer, near)] }]
    : []
  return { finding: finding(reading.unknownField, place, sentence, { severity, corrections }), meant }
}

/** The list that a group is an item of: `loads`. */
const listOf = ({ pointer }: MapNode) =>
  /^\d+$/.test(pointer.split('/').at(-1)!) ? pointer.split('/').at(-2) : undefined

/** Where a key is known, at the top or in the groups there: `under stc or noct`. */
function homesOf(key: string, root: FieldInfo): Phrase | null {
  const has = (info: FieldInfo | undefined) => info?.fields?.some((f) => f.key === key)
  const groups = (root.fields ?? []).filter((f) => has(f) || (f.type === 'list' && has(f.item))).map((f) => f.key)
  const under =
    groups.length > 1 ? phrase`under ${groups.slice(0, -1).join(', ')} or ${groups.at(-1)}` : phrase`under ${groups[0]}`
  if (groups.length === 0) return has(root) ? phrase`at the left margin` : null
  return has(root) ? phrase`at the left margin or ${under}` : under
}
