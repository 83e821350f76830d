import { phrase } from '../wording/phrase.ts'
import type { Finding } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import { duplicateKey } from '../text/hazards/duplicate-key.ts'
import { explains, hazards } from '../text/hazards/index.ts'
import { entriesOf } from '../text/tree-queries.ts'
import type { Span } from '../text/span.ts'
import type { Tree } from '../text/tree.ts'
import { reading } from './facts.ts'

/** What YAML did to the numbers before anybody could read them. */
export interface HazardsFound {
  readonly findings: readonly Finding[]
  /** Fields whose value must not be computed with. */
  readonly spoiled: ReadonlySet<string>
  /** Junk that a hazard left behind and has already explained. */
  readonly swallowed: ReadonlySet<string>
}

/** Looks for damaged numbers; syntax problems that no hazard explains are reported in plain words. */
export function hazardsOf(tree: Tree): HazardsFound {
  const found = hazards.flatMap((facts) => facts.find(tree).map((hazard) => ({ facts, hazard })))
  const rest = tree.problems.filter((problem) => !found.some(({ hazard }) => explains(hazard, problem)))
  return {
    findings: [
      ...found
        .filter(({ facts, hazard }) => facts !== duplicateKey || !isUnsettled(tree, hazard.span))
        .map(({ facts, hazard }) =>
          finding(facts, hazard, hazard.message, {
            severity: hazard.severity,
            related: hazard.related,
            corrections: hazard.fixes.map((fix) => ({ ...fix, pointer: hazard.pointer })),
          }),
        ),
      ...rest.map(({ message, sentence = phrase`${message}`, span, fix, otherFix }) => {
        const { pointer = '', value } =
          entriesOf(tree).find(({ entry }) => entry.keySpan.start === span.start)?.entry ?? {}
        const text = value?.kind === 'scalar' ? value.text : ''
        const corrections = [fix, otherFix].flatMap((one) => (one ? [{ ...one, pointer, text: one.text ?? text }] : []))
        return finding(reading.syntax, { pointer: fix ? pointer : '', span }, sentence, { corrections })
      }),
    ],
    spoiled: new Set([...found.flatMap(({ hazard }) => hazard.spoils), ...fieldsInVersions(tree)]),
    swallowed: new Set(found.flatMap(({ hazard }) => hazard.swallows)),
  }
}

/** Whether a place is among versions that nobody can tell apart, so that a field is in each of them. */
const isUnsettled = ({ problems }: Tree, { start }: Span) =>
  problems.some(({ spoils, fix }) => spoils && !fix && spoils.start <= start && start < spoils.end)

/** Fields of which there are several versions. */
export const fieldsInVersions = (tree: Tree): readonly string[] =>
  tree.problems.flatMap(({ spoils }) => (spoils ? fieldsIn(tree, spoils) : []))

const fieldsIn = (tree: Tree, { start, end }: Span): readonly string[] =>
  entriesOf(tree).flatMap(({ entry }) =>
    start <= entry.keySpan.start && entry.keySpan.start < end ? [entry.pointer] : [],
  )
