import type { Finding } from '../findings/finding.ts'
import type { Library } from '../library/library.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { PanelAbout } from '../rules/about.ts'
import { panelRules } from '../rules/panel/index.generated.ts'
import { judge } from './doubts.ts'
import { siteFor } from './site.ts'
import type { Today } from './today.ts'

/** What the plausibility rules find in a panel record. */
export function panelFindings(library: Library, file: ReadFile<'panel'>, { today }: Today): readonly Finding[] {
  const about: PanelAbout = {
    settings: library.settings(file.path)?.record,
    site: siteFor(library, file.path),
    today,
    siblings: [],
  }
  return judge(panelRules, file.record, about, file.tree)
}
