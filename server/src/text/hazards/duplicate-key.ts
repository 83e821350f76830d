import { joined, phrase, type Phrase } from '../../wording/phrase.ts'
import { groupBy } from '../group.ts'
import { removeThisEntry } from '../edits.ts'
import { lineAround, lineStarts, positionAt } from '../lines.ts'
import { shortened } from '../shortened.ts'
import { inventory } from '../tree-queries.ts'
import type { Entry, MapNode, Tree } from '../tree.ts'
import { hazard, yamlSource, type Hazard, type HazardRule, type Fix } from './hazard.ts'

export const duplicateKey: HazardRule = {
  id: 'field-twice',
  severity: 'error',
  reason: 'A map has every field once; some readers keep the first of two, some the last.',
  source: yamlSource('3.2.1.1'),
  find: (tree) =>
    inventory(tree).collections.flatMap((map) => {
      if (map.kind === 'list' || new Set(map.entries.map(({ key }) => key)).size === map.entries.length) return []
      const groups = groupBy(
        map.entries.filter(({ colon }) => colon !== null),
        ({ key }) => key,
      )
      const next = nextItem(tree, map)
      if (next) return [withoutDash(tree, next)]
      const pairs = [...groups.values()].flatMap(([first, ...others]) =>
        others.slice(0, mostTwins).map((second): Pair => ({ first: first!, second })),
      )
      const blocks = blocksOf(tree, map, pairs)
      const alone = pairs.filter((pair) => !blocks.some((block) => block.includes(pair)))
      return [
        ...blocks.map((block) => blockTwice(tree, block)),
        ...alone.map(({ first, second }) => twice(tree, first, second)),
      ]
    }),
}

interface Pair {
  readonly first: Entry
  readonly second: Entry
}

/** Lines one after the other that were pasted twice. */
function blocksOf(tree: Tree, { entries, flow }: MapNode, pairs: readonly Pair[]): readonly (readonly Pair[])[] {
  const blocks: Pair[][] = []
  let last = -2
  for (const [i, entry] of entries.entries()) {
    const pair = pairs.find(({ second }) => second === entry)
    if (flow || !pair || whole(tree, pair.first) !== whole(tree, entry)) continue
    if (last === i - 1) blocks.at(-1)!.push(pair)
    else blocks.push([pair])
    last = i
  }
  return blocks.filter(({ length }) => length > 1)
}

function blockTwice(tree: Tree, block: readonly Pair[]): Hazard {
  const [{ first, second }] = block as [Pair]
  const line = positionAt(lineStarts(tree.text), first.keySpan.start).line + 1
  const names = block.map(({ second: { key } }) => key)
  const more = names.length - 2
  const some = more < 2 ? joined(names) : phrase`${names.slice(0, 2).join(', ')} and ${more} more`
  return hazard({
    message: phrase`${some} are here for the second time, with the same values as from line ${line} on. Keep one of each.`,
    pointer: first.pointer,
    span: second.keySpan,
    // it is known what they are
    spoils: [],
    explains: block.map((pair) => pair.second.keySpan),
    related: [{ span: first.keySpan, message: phrase`${first.key} is here for the first time` }],
    fixes: [
      {
        edits: block.map((pair) => removeThisEntry(tree, pair.second)),
        why: phrase`the first kept`,
        certainty: 'same',
        text: quoted(tree, first),
      },
    ],
  })
}

/** Beyond these a file is no record. */
const mostTwins = 10

/** Of an item of a list the fields of the next one, where its fields begin again: their dash is missing. */
function nextItem({ text }: Tree, { flow, entries, span }: MapNode): readonly Entry[] | null {
  const line = lineAround(text, span.start)
  if (flow || !/^ *- +$/.test(text.slice(line.start, span.start))) return null
  const again = entries.findIndex(({ key }, i) => i > 0 && key === entries[0]!.key)
  const own = new Set(entries.slice(0, again).map(({ key }) => key))
  const next = entries.slice(again).filter(({ key }) => own.has(key))
  return again > 1 && next.length > 1 ? next : null
}

function withoutDash({ text }: Tree, next: readonly Entry[]): Hazard {
  const [{ keySpan: span, pointer }] = next as [Entry]
  const typed = text.slice(span.start, lineAround(text, span.start).end).trimEnd()
  const words = shortened(typed)
  return hazard({
    message: phrase`${words} is in a list without the dash that begins an item.`,
    pointer,
    span,
    spoils: next.map((entry) => entry.pointer),
    explains: next.map((entry) => entry.keySpan),
    fixes: [
      {
        edits: [{ span: { start: span.start - 2, end: span.start }, text: '- ' }],
        why: phrase`a dash before it`,
        certainty: 'guess',
        text: `- ${words}`,
      },
    ],
  })
}

function twice(tree: Tree, first: Entry, second: Entry): Hazard {
  const line = positionAt(lineStarts(tree.text), first.keySpan.start).line + 1
  const [before, here] = [shown(tree, first), shown(tree, second)]
  const same = whole(tree, first) === whole(tree, second)
  const keepFirst = keeping(tree, second, first, same ? 'same' : 'guess')
  const keepSecond = keeping(tree, first, second, 'guess')
  return hazard({
    message: same
      ? phrase`${first.key} is here for the second time, with the same value as in line ${line}. Keep one.`
      : before === here
        ? phrase`${first.key} is here twice, in line ${line} with other values. Keep the one that the sheet says.`
        : phrase`${first.key} is here twice: ${before} in line ${line}, and ${here} here. Keep the one that the sheet says.`,
    pointer: first.pointer,
    span: second.keySpan,
    spoils: same ? [] : [first.pointer],
    related: [{ span: first.keySpan, message: phrase`${first.key} is here for the first time` }],
    fixes: same ? [keepFirst] : [keepFirst, keepSecond],
  })
}

function keeping(tree: Tree, gone: Entry, kept: Entry, certainty: Fix['certainty']): Fix {
  return {
    edits: [removeThisEntry(tree, gone)],
    why: kept.keySpan.start < gone.keySpan.start ? phrase`the first kept` : phrase`the second kept`,
    certainty,
    text: quoted(tree, kept),
  }
}

const shown = (tree: Tree, entry: Entry): string | Phrase => (entry.value ? quoted(tree, entry) : phrase`nothing`)

const quoted = (tree: Tree, entry: Entry): string =>
  entry.value?.kind === 'scalar' ? entry.value.text : shortened(whole(tree, entry))

/** All that was typed as the value of an entry, however its lines are broken. */
function whole(tree: Tree, { value }: Entry): string {
  if (!value) return ''
  return value.kind === 'scalar'
    ? value.text
    : tree.text.slice(value.span.start, value.span.end).replaceAll(/\s+/g, ' ')
}
