const pattern = /^\d{4}-\d{2}-\d{2}$/
const day = 24 * 60 * 60 * 1000 // [ms]

/** Whether a text is written year-month-day and is a day of the calendar, which 2026-02-30 is not. */
export function isDay(text: string): boolean {
  return timeOf(text) !== undefined
}

/** Whole days from one year-month-day to another; undefined where either is no day. */
export function daysBetween(from: string, to: string): number | undefined {
  const [a, b] = [timeOf(from), timeOf(to)]
  return a === undefined || b === undefined ? undefined : (b - a) / day
}

/** The day that a clock shows where it is read, year-month-day. */
export const dayOf = (now: Date): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((n) => String(n).padStart(2, '0')).join('-')

/** Noon or midnight, winter or summer play no part: a date without a time is read as UTC. */
function timeOf(text: string): number | undefined {
  const time = pattern.test(text) ? Date.parse(text) : NaN
  // a day that its month does not have is read as one of the next month
  return !Number.isNaN(time) && new Date(time).getUTCDate() === Number(text.slice(-2)) ? time : undefined
}

/** The day so many days after another; undefined where that is no day. */
export function dayAfter(from: string, days: number): string | undefined {
  const time = timeOf(from)
  return time === undefined ? undefined : new Date(time + Math.round(days) * day).toISOString().slice(0, 10)
}
