import type { Finding } from '../findings/finding.ts'
import type { Library } from '../library/library.ts'
import { reading } from '../records/facts.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { PanelAbout } from '../rules/about.ts'
import { panelRules } from '../rules/panel/index.generated.ts'
import { pointers, type Evidence } from '../slips/evidence.ts'
import { familyOf } from '../slips/family/family.ts'
import { findSlip } from '../slips/find-slip.ts'
import type { SlipVerdict } from '../slips/verdict.ts'
import { childPointer, parentPointer } from '../text/pointer.ts'
import { entryAtPointer, nodeAtPointer } from '../text/tree-queries.ts'
import { isAccepted } from './acceptances.ts'
import { judge } from './doubts.ts'
import { evidenceOf } from './evidence.ts'
import { oneMistake } from './one-mistake.ts'
import { siteFor } from './site.ts'
import type { Today } from './today.ts'

/** What the plausibility rules and the slip search find in a panel record: one finding a mistake. */
export function panelFindings(library: Library, file: ReadFile<'panel'>, { today }: Today): readonly Finding[] {
  const evidence = evidenceOf(file)
  const kin = library.kinOf(file)
  const readings = kin.map(evidenceOf)
  const relatives = familyOf(evidence, readings)
  const nameOf = (one: Evidence) => titleOf(kin[readings.indexOf(one)]!)
  const family = (relatives?.siblings ?? []).map((one) => kin[readings.indexOf(one)]!)
  const asSiblings = (files: typeof kin) => files.map(({ path, record }) => ({ path, record }))
  const about = {
    settings: library.settings(file.path)?.record,
    site: siteFor(library, file.path),
    today,
    siblings: asSiblings(family),
    kin: asSiblings(kin),
  }
  const rules = (one: ReadFile<'panel'>) => {
    const told = askedForElsewhere(one)
    const typed = (pointer: string) =>
      (entryAtPointer(one.tree, pointer) ?? nodeAtPointer(one.tree, pointer)) !== null || told(pointer)
    const all: PanelAbout = { ...about, typed }
    return judge(panelRules, one, all)
  }
  const found = rules(file)
  const stands = isAccepted(file)
  const accepted = found.filter(stands)
  const verdict: SlipVerdict = isUnreadable(file) ? { kind: 'consistent' } : findSlip(evidence, relatives)
  const vouched = accepted.some(({ pointer, severity }) => severity !== 'hint' && pointer === slipAt(verdict))
  const open = found.filter((one) => !stands(one))
  return [...accepted, ...oneMistake(file, open, vouched ? { kind: 'consistent' } : verdict, { judge: rules, nameOf })]
}

const titleOf = ({ record, id }: ReadFile<'panel'>): string => record.name?.text ?? id

/** A field that is there under a misspelt name or at the wrong level has a finding that says so, and is not missed besides. */
function askedForElsewhere({ readFindings }: ReadFile<'panel'>): (pointer: string) => boolean {
  const meant = readFindings.flatMap(({ rule, pointer, corrections }) =>
    rule === reading.unknownField.id
      ? corrections.map(({ text }) => childPointer(parentPointer(pointer), text))
      : rule === reading.misplacedField.id
        ? [pointer.slice(pointer.lastIndexOf('/'))]
        : [],
  )
  return (pointer) => meant.some((one) => `${pointer}/`.includes(`${one}/`))
}

/** The field that a slip would be in: where a person has accepted what a rule says of it, it is none. */
const slipAt = (verdict: SlipVerdict): string | null => (verdict.kind === 'slip' ? verdict.pointer : null)

/**
 * A number that the search needs could not be read: that mistake is told already, and without the number the rest of the
 * record says too little to find another.
 */
const isUnreadable = ({ readFindings }: ReadFile<'panel'>): boolean =>
  readFindings.some(
    ({ severity, pointer }) => severity === 'error' && (pointers as readonly string[]).includes(pointer),
  )
