import { monthNames } from '../values/months.ts'
import { listed } from '../findings/listed.ts'

/** Months as a person would say them: October to February, June; every month but July. */
export function monthsInWords(months: readonly number[]): string {
  const has = (month: number) => months.includes(((month + 11) % 12) + 1)
  if (months.length === 12) return 'every month'
  const others = monthNames.filter((_, m) => !months.includes(m + 1))
  if (others.length <= 3) return `every month but ${listed(others)}`
  const starts = months.filter((month) => !has(month - 1))
  return listed(starts.flatMap((start) => runFrom(start)))

  function runFrom(start: number): string[] {
    let end = start
    while (has(end + 1)) end++
    const names = Array.from({ length: end - start + 1 }, (_, i) => monthNames[(start + i - 1) % 12]!)
    return names.length < 3 ? names : [`${names[0]} to ${names.at(-1)}`]
  }
}
