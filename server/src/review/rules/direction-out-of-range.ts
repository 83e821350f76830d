import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const directionOutOfRange = reviewRule({
  id: 'direction-out-of-range',
  severity: 'error',
  reason: 'What a panel yields through the year follows from where it faces.',
  source: 'geometry',
  messages: {
    tilt: 'A tilt lies between 0 deg, which is flat, and 90 deg, and this is {tilt}',
    azimuth: 'An azimuth is counted clockwise from north, from 0 to 360 deg, and this is {azimuth}',
  },

  check({ system }) {
    return system.surfaces.flatMap(({ tilt, azimuth }) => [
      ...(tilt && !(tilt.value >= 0 && tilt.value <= 90)
        ? [{ say: 'tilt' as const, with: { tilt: said(tilt) }, suspects: [tilt] as const }]
        : []),
      ...(azimuth && !(azimuth.value >= 0 && azimuth.value <= 360)
        ? [{ say: 'azimuth' as const, with: { azimuth: said(azimuth) }, suspects: [azimuth] as const }]
        : []),
    ])
  },
})
