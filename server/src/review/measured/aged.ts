import type { MeasuredFindings } from './measured-findings.ts'
import type { PowerLeft, Trend } from './power-left.ts'
import type { MeasuredString } from './string.ts'

/** Panels lose no more than this a year by age [1/year]: a third to 1 % is common, glued flexible ones lose more (common practice, no source). */
const fastest = 0.05
/** A line that falls by less than this is none to speak of [1/year] (common practice, no source). */
const slowest = 0.003
/** Loss that a line must come to before it is spoken of [1] (common practice, no source). */
const worthALook = 0.025
/** Loss over the years that were measured that is more than one day and another differ by [1] (common practice, no source). */
const plain = 0.04
/** Standard errors that the slope must be below 0 (common practice, no source). */
const certain = 2.5

/**
 * The strings of which age is likely to be what they lack: their power falls with the years at a pace that panels have, or
 * current and voltage are in order and only their product is low.
 */
export function agedOnes(trends: readonly Trend[], limit: number): ReadonlySet<MeasuredString> {
  return new Set(
    trends.flatMap((trend) => trend.points.filter((point) => isAged(trend, point, limit)).flatMap(stringsOf)),
  )
}

const stringsOf = ({ strings }: PowerLeft) => strings.map(({ string }) => string)

/** What is not seen at the ends of the curve is resistance, or cells that have come loose: no shade and no dirt. */
const endsAreSound = ({ string: { readings }, low }: MeasuredFindings): boolean =>
  readings.has('voc') &&
  readings.has('isc') &&
  low.every(({ reading: { quantity } }) => quantity === 'vmp' || quantity === 'imp')

function isAged({ line, points, array }: Trend, point: PowerLeft, limit: number): boolean {
  const lost = 1 - point.left
  const isLow = lost > Math.max(limit, point.uncertainty)
  if (isLow && point.from === 'power' && point.strings.every(endsAreSound)) return true
  if (!line || point.years <= 0) return false
  const pace = -line.slope
  if (pace < slowest || fastest < pace) return false
  const fitted = -line.slope * point.years
  if (fitted < worthALook) return false
  const isSteady = points.length > 2 && line.slope < -certain * line.slopeError
  const fallsFromStart = points.length > 1 || array.entry.installed !== undefined
  const span = points.at(-1)!.years - points[0]!.years
  return isSteady || pace * span >= plain || (isLow && fallsFromStart)
}
