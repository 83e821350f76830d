import { extraterrestrialDay, solarConstant } from '../../../server/src/physics/sun.ts'

/**
 * How far a day predicts the next: correlation of their clearness, less the mean of the month, over pairs within a month.
 *
 * @param days      of a year, with their global sun on the horizontal [Wh/m2]
 * @param latitude  [°]
 */
export function dayToDay(
  days: readonly { readonly day: number; readonly month: number; readonly global: number }[],
  latitude: number,
): number {
  const clearness = days.map(({ day, global }) => global / extraterrestrialDay(latitude, day, solarConstant))
  const off = clearness.map((k, d) => {
    const month = clearness.filter((_, other) => days[other]!.month === days[d]!.month)
    return k - month.reduce((a, b) => a + b, 0) / month.length
  })
  let both = 0
  let own = 0
  for (let d = 1; d < off.length; d++) {
    if (days[d]!.month !== days[d - 1]!.month) continue
    both += off[d]! * off[d - 1]!
    own += (off[d]! ** 2 + off[d - 1]! ** 2) / 2
  }
  return both / own
}
