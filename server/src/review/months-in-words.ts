import { sayFrom, type Param, type Catalogue } from '../findings/message.ts'
import { monthName, monthNames } from '../findings/months.ts'

export const spans = {
  id: 'months-in-words',
  messages: { all: 'every month', none: 'no month', allBut: 'every month but {months}', run: '{first} to {last}' },
} as const satisfies Catalogue

const say = sayFrom(spans)

/** Months as a person would say them: October to February, June; every month but July. */
export function monthsInWords(typed: readonly number[]): Param {
  // others are reported where they are typed
  const months = typed.filter((month) => monthNames[month - 1] !== undefined)
  if (months.length === 0) return say({ say: 'none' })
  const has = (month: number) => months.includes(((month + 11) % 12) + 1)
  const others = monthNames.flatMap((_, m) => (months.includes(m + 1) ? [] : [m + 1]))
  if (others.length === 0) return say({ say: 'all' })
  if (others.length <= 3) return say({ say: 'allBut', with: { months: { list: others.map(monthName), last: 'and' } } })
  const starts = months.filter((month) => !has(month - 1))
  return { list: starts.flatMap((start) => runFrom(start)), last: 'and' }

  function runFrom(start: number): Param[] {
    let end = start
    while (has(end + 1)) end++
    const names = Array.from({ length: end - start + 1 }, (_, i) => monthName(((start + i - 1) % 12) + 1))
    return names.length < 3 ? names : [say({ say: 'run', with: { first: names[0], last: names.at(-1) } })]
  }
}
