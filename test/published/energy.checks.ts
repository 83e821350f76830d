import { diffuseMonth, diffuseShare, globalShare } from '../../server/src/physics/diffuse.ts'
import {
  extraterrestrialNormal,
  horizontalIrradiation,
  meanDays,
  sunPosition,
  sunsetHourAngle,
} from '../../server/src/physics/sun.ts'
import { incidenceCosine } from '../../server/src/physics/transposition.ts'
import { about, printed, type Check } from './check.ts'
import { cooperDeclination as declination } from '../physics/models/cooper-declination.ts'
import { isotropic } from '../physics/models/transposition.ts'

/** Example 2.19.1: 43° north, tilt 60° south, mean daily sun and albedo of each month [MJ/m2]. */
const sun = [6.44, 9.89, 12.86, 16.05, 21.36, 23.04, 22.58, 20.33, 14.59, 10.48, 6.37, 5.74]
const albedo = [0.7, 0.7, 0.4, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.4]
const onPlane = [13.7, 17.2, 15.8, 14.7, 16.6, 16.5, 16.8, 17.5, 15.6, 15.2, 11.4, 12.7]

/** As the book has it: solar constant 1367 W/m2, and the declination of Cooper. */
const clearness = sun.map((h, m) => {
  const delta = declination(meanDays[m]!)
  const sunset = sunsetHourAngle(43, delta)
  const above = horizontalIrradiation(43, delta, extraterrestrialNormal(meanDays[m]!, 1367), -sunset, sunset)
  return h / (above * 0.0036)
})

/** As the book does it: the beam spread over the day like the sun above the atmosphere, here in steps of six minutes. */
const monthly = sun.map((total, month) => {
  const delta = declination(meanDays[month]!)
  const sunset = sunsetHourAngle(43, delta)
  const diffuse = diffuseMonth(clearness[month]!, sunset)
  let onTilt = 0
  for (let angle = -179.25; angle < 180; angle += 1.5) {
    const share = diffuseShare(angle, sunset) / 10
    if (share === 0) continue
    const { zenith, azimuth } = sunPosition(43, delta, angle)
    const normal = (total * (1 - diffuse) * share) / Math.cos((zenith * Math.PI) / 180)
    const cosine = incidenceCosine({ tilt: 60, azimuth: 180 }, zenith, azimuth)
    const { beam, sky, ground } = isotropic(normal, total * diffuse * share, total * share, cosine, 60, albedo[month]!)
    onTilt += beam + sky + ground
  }
  return onTilt
})

const august = sunsetHourAngle(43, declination(235))

export const energyChecks: readonly Check[] = [
  ...monthly.map((ours, m) =>
    about(
      `sun on a 60° plane, 43° north, month ${m + 1}, MJ/m2`,
      'Duffie & Beckman, 4th ed. (2013), example 2.19.1; the book rounds its steps to three figures, which is worth half a percent',
      ours,
      onPlane[m]!,
      0.08,
    ),
  ),
  printed(
    'share of the hour 13 to 14, 23 August',
    'Duffie & Beckman, 4th ed. (2013), example 2.13.2, own arithmetic',
    globalShare(22.5, august),
    '0.1177',
  ),
]
