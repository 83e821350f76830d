import { phrase } from '../../wording/phrase.ts'
import { groupBy } from '../group.ts'
import { hazard, yamlSource, type HazardRule } from './hazard.ts'
import { strays } from './strays.ts'

export const quantityInBraces: HazardRule = {
  id: 'braces-around-number',
  severity: 'error',
  reason: '{ } makes a map of what is inside, so the number becomes the name of a field without a value.',
  source: yamlSource('7.4.2'),
  find: (tree) =>
    [
      ...groupBy(
        strays(tree).filter(({ kind }) => kind === 'wrapped'),
        ({ map }) => map,
      ).keys(),
    ].map((map) => {
      const inner = tree.text.slice(map.entries[0]!.keySpan.start, map.entries.at(-1)!.keySpan.end)
      const text = map.entries.length === 2 ? inner.replace(/(?<=\d),(?=\d)/, '.') : inner
      const readable = !text.includes(',')
      return hazard({
        message: phrase`The braces around ${inner} make a map of it.${readable ? phrase` Write ${text} without them.` : phrase` Write one number without them.`}`,
        pointer: map.pointer,
        span: map.span,
        swallows: map.entries.map(({ pointer }) => pointer),
        fixes: readable
          ? [{ edits: [{ span: map.span, text }], why: phrase`without braces`, certainty: 'same', text }]
          : [],
      })
    }),
}
