import type { Bundle } from '../findings/words.ts'

/** What the adapters know and the layers below may not ask for. */
export interface Today {
  /** The date, year-month-day. */
  readonly today: string
  /** Messages of another language. */
  readonly bundle?: Bundle
}
