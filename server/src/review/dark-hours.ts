import type { Hours } from './year-battery.ts'

/** Days and nights of the year on which a load is not met. */
export interface Dark {
  readonly days: number
  readonly nights: number
}

/** A night runs from 18 to 6 h; more than a hundredth of the hour's load must lack. */
export function darkHours({ unserved, load }: Pick<Hours, 'unserved' | 'load'>): Dark {
  const days = new Set<number>()
  const nights = new Set<number>()
  unserved.forEach((wh, h) => {
    if (wh <= 0.01 * load[h]!) return
    const since = h + 6
    if (since % 24 < 12) nights.add(Math.floor(since / 24))
    else days.add(Math.floor(since / 24))
  })
  return { days: days.size, nights: nights.size }
}
