import { phrase } from '../../wording/phrase.ts'
import { entriesOf } from '../tree-queries.ts'
import { hazard, type HazardRule } from './hazard.ts'

export const mergeKey: HazardRule = {
  id: 'merge-key',
  severity: 'error',
  reason: 'Records say everything in its place: YAML 1.2 has no merge key, and readers that know it disagree.',
  source: 'YAML 1.2.2, section 10.3 (core schema, which has none); YAML 1.1 type repository, "merge"',
  find: (tree) =>
    entriesOf(tree)
      .filter(({ entry, map }) => entry.key === '<<' && tree.text[entry.keySpan.start] === '<' && map.kind === 'map')
      .map(({ entry }) =>
        hazard({
          message: phrase`<< copies fields from another place, which records do not do. Write the fields out here.`,
          pointer: entry.pointer,
          span: {
            start: entry.keySpan.start,
            end: entry.value?.kind === 'scalar' ? entry.value.span.end : entry.keySpan.end,
          },
          swallows: [entry.pointer],
        }),
      ),
}
