import type { SurfaceRow } from './row.ts'

/**
 * Marks the rows that no other betters: none that is not excluded gives at least as much energy a year for no more weight and no
 * more money, and more of one of them. What a row does not know it does not compete on.
 */
export function withFront(rows: readonly SurfaceRow[]): readonly SurfaceRow[] {
  const running = rows.filter(({ excluded, kwh_year: energy }) => excluded === null && energy !== null)
  return rows.map((row) => ({
    ...row,
    front: running.includes(row) && !running.some((other) => other !== row && betters(other, row)),
  }))
}

function betters(other: SurfaceRow, row: SurfaceRow): boolean {
  const energy = other.kwh_year! - row.kwh_year!
  if (energy < 0) return false
  const weight = less(other.weight_kg, row.weight_kg)
  const money = less(priceFor(other, row), row.price?.amount ?? null)
  return weight >= 0 && money >= 0 && (energy > 0 || weight > 0 || money > 0)
}

/** Nothing where the row itself does not know; what only the other does not know counts against it. */
const less = (other: number | null, own: number | null): number => (own === null ? 0 : own - (other ?? Infinity))

const priceFor = (other: SurfaceRow, row: SurfaceRow) =>
  other.price && other.price.currency === row.price?.currency ? other.price.amount : null

/** Most energy first, then the least price of it; the excluded last. */
export const bestFirst = (rows: readonly SurfaceRow[]): readonly SurfaceRow[] =>
  [...rows].sort(
    (a, b) =>
      Number(a.excluded !== null) - Number(b.excluded !== null) ||
      (b.kwh_year ?? -1) - (a.kwh_year ?? -1) ||
      (a.price_per_kwh?.amount ?? 1e9) - (b.price_per_kwh?.amount ?? 1e9) ||
      (a.panel < b.panel ? -1 : 1),
  )
