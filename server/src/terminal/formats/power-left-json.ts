import { measuredOf } from '../../review/measured/measured.ts'
import { nameOf } from '../../review/measured/string.ts'
import type { ResolvedSystem } from '../../review/resolved.ts'

/** How the power of each array has gone, and when its trend is below the warranty. */
export const powerLeft = (system: ResolvedSystem) =>
  measuredOf(system).trends.map(({ array, points, line, crosses }) => ({
    array: nameOf(array),
    points: points.map(({ date, years, left, uncertainty, warranted, from }) => ({
      date,
      years,
      left_pct: 100 * left,
      uncertainty_pct: 100 * uncertainty,
      warranted_pct: warranted === null ? null : 100 * warranted,
      from,
    })),
    pct_a_year: line && 100 * line.slope,
    below_warranty_from: crosses,
  }))
