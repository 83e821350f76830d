const pattern = /^(\d{4})-(\d{2})-(\d{2})$/

/** Whole days from one year-month-day to another; undefined where either is no date. Proleptic Gregorian calendar. */
export function daysBetween(from: string, to: string): number | undefined {
  const [a, b] = [dayNumber(from), dayNumber(to)]
  return a === undefined || b === undefined ? undefined : b - a
}

/** Days since 0000-03-01, counting years from March so that the leap day comes last. */
function dayNumber(date: string): number | undefined {
  const [, y, m, d] = (pattern.exec(date) ?? []).map(Number)
  if (y === undefined || m === undefined || d === undefined || m < 1 || m > 12 || d < 1 || d > 31) return undefined
  const year = m > 2 ? y : y - 1
  const month = (m + 9) % 12
  return (
    365 * year +
    Math.floor(year / 4) -
    Math.floor(year / 100) +
    Math.floor(year / 400) +
    Math.floor((month * 306 + 5) / 10) +
    d -
    1
  )
}
