import type { Panel } from '../records/records.generated.ts'

/** Bypass diodes of a panel: as its sheet says, else one for each two rows of ten cells (common practice, no source). */
export const bypassDiodesOf = ({ cells }: Panel): number =>
  cells.bypass_diodes?.value ?? Math.max(1, Math.round((cells.in_series?.value ?? 36) / 20))
