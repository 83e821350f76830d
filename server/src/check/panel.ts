import type { Found } from '../findings/found.ts'
import type { Library } from '../library/library.ts'
import type { Rule } from '../findings/rule.ts'
import { reading } from '../records/facts.ts'
import { onceEachWhile } from '../records/once-each.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { Panel } from '../records/records.generated.ts'
import type { FamilyAbout, Kindred, PanelAbout } from '../rules/about.ts'
import { panelRules } from '../rules/panel/index.generated.ts'
import { offTheLadder } from '../rules/panel/off-the-ladder.ts'
import { uneditedCopy } from '../rules/panel/unedited-copy.ts'
import { unlikeFamily } from '../rules/panel/unlike-family.ts'
import { weightUnlikeSiblings } from '../rules/panel/weight-unlike-siblings.ts'
import { missingColon } from '../text/hazards/missing-colon.ts'
import { missingSpace } from '../text/hazards/missing-space.ts'
import { childPointer, parentPointer } from '../text/pointer.ts'
import { entryAtPointer, nodeAtPointer } from '../text/tree-queries.ts'
import type { Relatives } from './family.ts'
import { applyRules } from './apply-rules.ts'
import { siteFor } from './site.ts'
import type { Today } from './today.ts'

/** The rules that compare a panel with others; all other rules look at nothing but the panel and the settings. */
export const familyRules: readonly Rule<Kindred, FamilyAbout>[] = [
  offTheLadder,
  uneditedCopy,
  unlikeFamily,
  weightUnlikeSiblings,
]

const inOrder = new Map<string, number>(panelRules.map(({ id }, i) => [id, i]))
const others = panelRules.filter(({ id }) => !isFamilyRule(id)) as readonly Rule<Panel, PanelAbout>[]

export function isFamilyRule(id: string): boolean {
  return familyRules.some((rule) => rule.id === id)
}

/** The plausibility rules over a panel record, and over what corrections make of it. */
export interface PanelRules {
  /** What all of them find in a file that has these relatives. */
  readonly beside: (file: ReadFile<'panel'>, relatives: Pick<Relatives, 'siblings' | 'kin'>) => readonly Found[]
  /** What those find that look at no other record. */
  readonly alone: (file: ReadFile<'panel'>) => readonly Found[]
}

export function panelRulesFor(library: Library, { today }: Today): PanelRules {
  // whatever the relatives of a correction are, it is looked at alone only once
  const alone = onceEachWhile((file: ReadFile<'panel'>) => foundAlone(library, file, today))
  return {
    alone,
    beside: (file, { siblings, kin }) => {
      const found = applyRules(familyRules, file, { siblings, kin })
      return found.length === 0
        ? alone(file)
        : [...alone(file), ...found].sort((a, b) => inOrder.get(a.rule.id)! - inOrder.get(b.rule.id)!)
    },
  }
}

/** What the rules find in a panel record that look at no other. */
export const foundAlone = (library: Library, file: ReadFile<'panel'>, today: string): readonly Found[] =>
  applyRules(others, file, aboutOf(library, file, today))

function aboutOf(library: Library, file: ReadFile<'panel'>, today: string): PanelAbout {
  const isAsked = askedForElsewhere(file)
  const typed = (pointer: string) =>
    (entryAtPointer(file.tree, pointer) ?? nodeAtPointer(file.tree, pointer)) !== null || isAsked(pointer)
  return { settings: library.settings(file.path)?.record, site: siteFor(library, file.path), today, typed }
}

/** A field that is there under a misspelt name, at the wrong level, or without its colon or the space behind it, has a finding that says so, and is not missed besides. */
function askedForElsewhere({ readFindings }: ReadFile<'panel'>): (pointer: string) => boolean {
  const meant = readFindings().flatMap(({ rule, pointer, corrections }) =>
    rule === reading.unknownField.id
      ? corrections.map(({ text }) => childPointer(parentPointer(pointer), text))
      : rule === reading.misplacedField.id
        ? [pointer.slice(pointer.lastIndexOf('/'))]
        : rule === missingColon.id || rule === missingSpace.id
          ? [pointer]
          : [],
  )
  return (pointer) => meant.some((one) => `${pointer}/`.includes(`${one}/`))
}
