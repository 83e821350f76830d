import type { Found } from '../findings/found.ts'
import type { Library } from '../library/library.ts'
import { reading } from '../records/facts.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { Panel } from '../records/records.generated.ts'
import type { FamilyAbout, PanelAbout } from '../rules/about.ts'
import { panelRules } from '../rules/panel/index.generated.ts'
import { missingColon } from '../text/hazards/missing-colon.ts'
import { childPointer, parentPointer } from '../text/pointer.ts'
import { entryAtPointer, nodeAtPointer } from '../text/tree-queries.ts'
import type { Relatives } from './family.ts'
import { applyRules } from './apply-rules.ts'
import { siteFor } from './site.ts'
import type { Today } from './today.ts'

/** The plausibility rules over a panel record: what they say of the file, and of the file after a change. */
export function panelRulesFor(
  library: Library,
  { path }: ReadFile<'panel'>,
  { siblings, kin }: Pick<Relatives, 'siblings' | 'kin'>,
  { today }: Today,
): (file: ReadFile<'panel'>) => readonly Found[] {
  const about = { settings: library.settings(path)?.record, site: siteFor(library, path), today, siblings, kin }
  return (file) => {
    const isAsked = askedForElsewhere(file)
    const typed = (pointer: string) =>
      (entryAtPointer(file.tree, pointer) ?? nodeAtPointer(file.tree, pointer)) !== null || isAsked(pointer)
    return applyRules<Panel, PanelAbout & FamilyAbout>(panelRules, file, { ...about, typed })
  }
}

/** A field that is there under a misspelt name, at the wrong level or without its colon has a finding that says so, and is not missed besides. */
function askedForElsewhere({ readFindings }: ReadFile<'panel'>): (pointer: string) => boolean {
  const meant = readFindings().flatMap(({ rule, pointer, corrections }) =>
    rule === reading.unknownField.id
      ? corrections.map(({ text }) => childPointer(parentPointer(pointer), text))
      : rule === reading.misplacedField.id
        ? [pointer.slice(pointer.lastIndexOf('/'))]
        : rule === missingColon.id
          ? [pointer]
          : [],
  )
  return (pointer) => meant.some((one) => `${pointer}/`.includes(`${one}/`))
}
