import type { Panel, Settings } from '../records/records.generated.ts'

/** How long a panel is expected to last. */
export interface ExpectedLife {
  readonly years: number
  /** From the settings of the library, or what is usual in the trade. */
  readonly from: 'settings' | 'common practice'
}

/** [s] */
const year = 365 * 86400

/**
 * Years by construction. Flexible: bonded ones last one to five (common practice, no source), of which the settings'
 * example is taken. Rigid: what their makers warrant (common practice, no source).
 */
const usual = { flexible: 4, rigid: 25 } as const

/** Null where neither the settings nor practice say anything, or the construction is not known. */
export function expectedLife({ construction }: Panel, settings: Settings | undefined): ExpectedLife | null {
  const kind = construction?.value
  if (!kind) return null
  const typed = settings?.expected_life[kind]
  if (typed && typed.value > 0) return { years: typed.value / year, from: 'settings' }
  return kind === 'folding' ? null : { years: usual[kind], from: 'common practice' }
}
