import type { Finding, Severity } from '../../findings/finding.ts'
import { rank } from '../../findings/severities.ts'
import { cautionsIn } from '../cautions.ts'
import type { Figures } from '../figures.ts'
import { marginsOf, type Margin } from '../margins.ts'
import { systemPicture, type SystemPicture } from '../picture/system-picture.ts'
import type { ResolvedSystem, SiteTemperature } from '../resolved.ts'
import { assumptionsOf } from './assumptions.ts'
import { measuredRows, type MeasuredRow } from './measured-rows.ts'
import { partsOf, type PartsList } from './parts.ts'
import { promisesOf } from './promises.ts'
import { warrantyNotes } from './warranty-notes.ts'
import type { Bundle } from '../../wording/bundle.ts'

/** Everything on the page for a customer, as plain data. */
export interface PageData {
  readonly picture: SystemPicture
  readonly kind: 'boat' | 'vehicle' | 'cabin' | null
  readonly promises: readonly string[]
  readonly parts: PartsList
  readonly assumptions: readonly string[]
  readonly coldest: SiteTemperature
  readonly hottest: SiteTemperature
  readonly margins: readonly Margin[]
  readonly findings: readonly Found[]
  /** What a person let stand, and why. */
  readonly accepted: readonly { readonly message: string; readonly because: string }[]
  readonly warranty: readonly string[]
  readonly measured: readonly MeasuredRow[]
  readonly cautions: readonly string[]
}

export interface Found {
  readonly severity: Severity
  readonly message: string
}

/** What was found, as far as the page needs it. */
export interface FoundInFile {
  readonly findings: readonly Finding[]
  readonly accepted: readonly { readonly finding: Finding; readonly because: string }[]
}

/** @param bundle  of the language that the figures and findings are in */
export function pageData(system: ResolvedSystem, figures: Figures, found: FoundInFile, bundle?: Bundle): PageData {
  return {
    picture: systemPicture(system, figures, bundle),
    kind: system.system.kind?.value ?? null,
    promises: promisesOf(system, figures, bundle),
    parts: partsOf(system, bundle),
    assumptions: assumptionsOf(system, bundle),
    coldest: system.coldest,
    hottest: system.hottest,
    margins: marginsOf(system, figures, bundle),
    findings: found.findings
      .map(({ severity, message }) => ({ severity, message }))
      .sort((a, b) => rank(a.severity) - rank(b.severity)),
    accepted: found.accepted.map(({ finding, because }) => ({ message: finding.message, because })),
    warranty: warrantyNotes(system, bundle),
    measured: measuredRows(system, bundle),
    cautions: cautionsIn(bundle),
  }
}
