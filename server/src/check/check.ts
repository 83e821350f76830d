import type { Finding } from '../findings/finding.ts'
import type { Library } from '../library/library.ts'
import { internalError } from '../records/internal-error.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { Panel } from '../records/records.generated.ts'
import { systemValues } from '../review/system-values.ts'
import { panelValues } from '../values/panel-values.ts'
import type { Value } from '../values/value.ts'
import { settle } from './acceptances.ts'
import { besideSheet } from './beside-sheet.ts'
import type { Checked } from './checked.ts'
import { panelFindings } from './panel.ts'
import { batteryFindings, climateFindings, controllerFindings } from './records.ts'
import { reviewSystem } from './review.ts'
import { ruleNames, settingsFindings } from './rule-names.ts'
import { inOrder, withSeverities } from './severities.ts'
import { siteFor } from './site.ts'
import { unresolvedFindings, unusedFindings } from './system.ts'
import { weatherFindings } from './weather.ts'
import type { Today } from './today.ts'

export type { Today } from './today.ts'

/**
 * Checks one file of a library. The same for the editor and for the command line, to the letter. A mistake of our own
 * becomes a finding beside those of reading.
 *
 * @returns null when the library holds no such file
 */
export function checkFile(library: Library, path: string, now: Today): Checked | null {
  const file = library.file(path)
  if (!file) return null
  if (file.unread) return { ...file, findings: file.readFindings, accepted: [], values: () => [] }
  try {
    return settled(library, file, now)
  } catch (error) {
    const findings = inOrder([...file.readFindings, internalError(error)])
    return { ...file, findings, accepted: [], values: () => [] }
  }
}

function settled(library: Library, file: ReadFile, now: Today): Checked {
  const settings = library.settings(file.path)?.record
  const found = withSeverities([...file.readFindings, ...kindFindings(library, file, now)], settings)
  const { findings, accepted } = settle(file, found, ruleNames)
  let values: readonly Value[] | null = null
  return {
    ...file,
    findings: inOrder(findings),
    accepted,
    values: () => (values ??= valuesOf(library, file, now)),
  }
}

function valuesOf(library: Library, file: ReadFile, { years }: Today): readonly Value[] {
  if (file.kind === 'panel') return panelValues(file.record as Panel, siteFor(library, file.path))
  if (file.kind !== 'system') return []
  const { system, figures } = reviewSystem(library, file as ReadFile<'system'>, years)
  return systemValues(system, figures)
}

function panelWithSheet(library: Library, file: ReadFile<'panel'>, now: Today): readonly Finding[] {
  const judge = (one: ReadFile<'panel'>) => panelFindings(library, one, now)
  return besideSheet(file, judge(file), now.sheetOf?.(file.path), judge)
}

function kindFindings(library: Library, file: ReadFile, now: Today): readonly Finding[] {
  switch (file.kind) {
    case 'panel':
      return [...panelWithSheet(library, file as ReadFile<'panel'>, now), ...unusedFindings(library, file)]
    case 'controller':
      return [...controllerFindings(file as ReadFile<'controller'>), ...unusedFindings(library, file)]
    case 'battery':
      return [...batteryFindings(file as ReadFile<'battery'>), ...unusedFindings(library, file)]
    case 'climate':
      return [
        ...climateFindings(file as ReadFile<'climate'>),
        ...weatherFindings(library, file as ReadFile<'climate'>),
        ...unusedFindings(library, file),
      ]
    case 'system':
      return reviewSystem(library, file as ReadFile<'system'>, now.years).findings
    case 'library':
      return [...settingsFindings(file as ReadFile<'library'>), ...unresolvedFindings(library, file)]
  }
}
