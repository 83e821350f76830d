/** From when to when on the clock [h]; past 24 it goes on in the morning. */
export interface Window {
  readonly from: number
  readonly to: number
}

/** What the words for a time of day mean (common practice, no source). */
const words: Readonly<Record<string, Window>> = {
  day: { from: 8, to: 18 },
  evening: { from: 18, to: 24 },
  night: { from: 22, to: 30 },
}

const range = /^(\d{1,2})(?::(\d\d))?\s*(?:\.\.\.?|…|-|–|to)\s*(\d{1,2})(?::(\d\d))?\s*h?$/

/** The window that a text means; null for one that means none. */
export function windowOf(text: string): Window | null {
  const word = words[text.trim()]
  if (word) return word
  const [, h1, m1 = '0', h2, m2 = '0'] = range.exec(text.trim()) ?? []
  if (h1 === undefined || h2 === undefined) return null
  const [from, to] = [Number(h1) + Number(m1) / 60, Number(h2) + Number(m2) / 60]
  if (from > 24 || to > 24) return null
  return { from, to: to <= from ? to + 24 : to }
}

/**
 * How the energy of a day is spread over its 24 hours: evenly over the window, and what the window is too short for evenly over
 * the rest of the day.
 *
 * @param window  null for the whole day
 * @param hours   how long it runs [h], above 0
 * @returns       24 shares that add up to 1
 */
export function sharesOf(window: Window | null, hours: number): readonly number[] {
  if (!window) return evenly
  const length = window.to - window.from
  const inside = Math.min(1, length / hours)
  return evenly.map((_, hour) => {
    const overlap = common(window, hour) + common(window, hour + 24)
    return (inside * overlap) / length + (length < 24 ? ((1 - inside) * (1 - overlap)) / (24 - length) : 0)
  })
}

const evenly: readonly number[] = new Array<number>(24).fill(1 / 24)

const common = ({ from, to }: Window, hour: number) => Math.max(0, Math.min(to, hour + 1) - Math.max(from, hour))
