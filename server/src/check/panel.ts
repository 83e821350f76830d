import type { Finding } from '../findings/finding.ts'
import type { Library } from '../library/library.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { PanelAbout } from '../rules/about.ts'
import { panelRules } from '../rules/panel/index.generated.ts'
import { findSlip } from '../slips/find-slip.ts'
import { entryAtPointer, nodeAtPointer } from '../text/tree-queries.ts'
import { judge } from './doubts.ts'
import { evidenceOf } from './evidence.ts'
import { oneMistake } from './one-mistake.ts'
import { siteFor } from './site.ts'
import type { Today } from './today.ts'

/** What the plausibility rules and the slip search find in a panel record: one finding a mistake. */
export function panelFindings(library: Library, file: ReadFile<'panel'>, { today }: Today): readonly Finding[] {
  const about = {
    settings: library.settings(file.path)?.record,
    site: siteFor(library, file.path),
    today,
    siblings: [],
  }
  const rules = (one: ReadFile<'panel'>) => {
    const typed = (pointer: string) => (entryAtPointer(one.tree, pointer) ?? nodeAtPointer(one.tree, pointer)) !== null
    const all: PanelAbout = { ...about, typed }
    return judge(panelRules, one, all)
  }
  return oneMistake(file, rules(file), findSlip(evidenceOf(file)), rules)
}
