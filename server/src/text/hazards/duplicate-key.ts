import { phrase } from '../../wording/phrase.ts'
import { groupBy } from '../group.ts'
import { removeThisEntry } from '../edits.ts'
import { lineStarts, positionAt } from '../lines.ts'
import { inventory } from '../tree-queries.ts'
import type { Entry, Tree } from '../tree.ts'
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
      return [...groups.values()].flatMap(([first, ...others]) =>
        others.slice(0, mostTwins).map((other) => twice(tree, first!, other)),
      )
    }),
}

/** Beyond these a file is no record. */
const mostTwins = 10

function twice(tree: Tree, first: Entry, second: Entry): Hazard {
  const line = positionAt(lineStarts(tree.text), first.keySpan.start).line + 1
  const [before, here] = [shown(tree, first), shown(tree, second)]
  const same = before === here
  const keepFirst = keeping(tree, second, first, same ? 'same' : 'guess')
  const keepSecond = keeping(tree, first, second, 'guess')
  return hazard({
    message: same
      ? phrase`${first.key} is here for the second time, with the same value as in line ${line}. Keep one.`
      : phrase`${first.key} is here twice: ${before} in line ${line}, and ${here} here. Keep the one that the sheet says.`,
    pointer: first.pointer,
    span: second.keySpan,
    related: [{ span: first.keySpan, message: phrase`${first.key} is here for the first time` }],
    fixes: same ? [keepFirst] : [keepFirst, keepSecond],
  })
}

function keeping(tree: Tree, gone: Entry, kept: Entry, certainty: Fix['certainty']): Fix {
  const text = kept.value ? shown(tree, kept) : ''
  return {
    edits: [removeThisEntry(tree, gone)],
    why: kept.keySpan.start < gone.keySpan.start ? phrase`the first kept` : phrase`the second kept`,
    certainty,
    text,
  }
}

function shown(tree: Tree, { value }: Entry): string {
  if (!value) return 'nothing'
  if (value.kind === 'scalar') return value.text
  const typed = tree.text.slice(value.span.start, value.span.end).replaceAll(/\s+/g, ' ')
  return typed.length <= 40 ? typed : `${typed.slice(0, 37)}...`
}
