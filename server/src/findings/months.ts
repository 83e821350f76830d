import type { Catalogue, Said } from './message.ts'

export const monthNames = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const

/** The names of the months, which another language replaces. */
export const months: Catalogue = { id: 'months', messages: Object.fromEntries(monthNames.map((name) => [name, name])) }

/** The name of a month. @param month  from 1 */
export const monthName = (month: number): Said => ({ say: monthNames[month - 1]!, of: months })
