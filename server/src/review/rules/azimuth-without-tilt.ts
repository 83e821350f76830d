import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const azimuthWithoutTilt = reviewRule({
  id: 'azimuth-without-tilt',
  severity: 'information',
  reason: 'A level panel faces no direction, so one of the two numbers was meant otherwise.',
  source: 'geometry',
  messages: {
    found: 'With a tilt of {tilt} the azimuth {azimuth} has no effect',
  },

  check({ system }) {
    return system.surfaces.flatMap(({ tilt, azimuth }) =>
      azimuth && tilt && tilt.value === 0
        ? [
            {
              say: 'found',
              with: { tilt: said(tilt), azimuth: said(azimuth) },
              suspects: [azimuth, tilt] as const,
            },
          ]
        : [],
    )
  },
})
