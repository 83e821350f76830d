import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const azimuthWithoutTilt: ReviewRule = {
  id: 'azimuth-without-tilt',
  severity: 'information',
  reason: 'A level panel faces no direction, so one of the two numbers was meant otherwise.',
  source: 'geometry',

  check({ system }) {
    return system.surfaces.flatMap(({ tilt, azimuth }) =>
      azimuth && tilt && tilt.value === 0
        ? [
            {
              message: `With a tilt of ${said(tilt)} the azimuth ${said(azimuth)} has no effect`,
              suspects: [azimuth, tilt] as const,
            },
          ]
        : [],
    )
  },
}
