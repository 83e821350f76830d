import { skyBrightness } from '../../server/src/physics/perez.ts'
import { perez } from '../physics/models/perez.ts'
import {
  declination,
  extraterrestrialNormal,
  hourAngle,
  solarConstant,
  sunPosition,
} from '../../server/src/physics/sun.ts'
import { incidenceCosine } from '../../server/src/physics/transposition.ts'
import { isotropic } from '../physics/models/transposition.ts'
import { relative, type Check } from './check.ts'
import { readTable } from './read-table.ts'

const source = 'measured at Holzkirchen, 21 August to 30 September 2013, see data/README.md'
const [latitude, longitude, meridian] = [47.874, 11.728, 15]
const albedo = 0.23
const tilt = 90
const planes = { north: 0, east: 90, south: 180, west: 270 }

/** Half hours with the sun at least 3° up, and where it stands in their middle. */
const hours = readTable('holzkirchen-vertical.csv').flatMap((row) => {
  const at = (name: string) => Number(row[name])
  const day = at('day')
  const { zenith, azimuth } = sunPosition(
    latitude,
    declination(day),
    hourAngle(at('hour') + 0.25, day, longitude, meridian),
  )
  if (zenith > 87) return []
  const up = Math.cos((zenith * Math.PI) / 180)
  const global = at('global')
  const diffuse = Math.min(global, at('diffuse'))
  return [{ at, day, zenith, azimuth, up, global, diffuse, normal: (global - diffuse) / up }]
})

const mean = (list: readonly number[]) => list.reduce((sum, x) => sum + x, 0) / list.length
const sum = ({ beam, sky, ground }: ReturnType<typeof perez>) => beam + sky + ground

/** Mean over all hours: measured, of our sky, and of an even one; `off` is how far half an hour is out [W/m2]. */
export const onPlanes = Object.entries(planes).map(([name, facing]) => {
  const ours = hours.map(({ day, zenith, azimuth, up, global, diffuse, normal }) => {
    const cosine = incidenceCosine({ tilt, azimuth: facing }, zenith, azimuth)
    const bright = skyBrightness(normal, diffuse, up, extraterrestrialNormal(day, solarConstant))
    return {
      perez: sum(perez(normal, diffuse, global, cosine, up, bright, tilt, albedo)),
      even: sum(isotropic(normal, diffuse, global, cosine, tilt, albedo)),
    }
  })
  const measured = hours.map(({ at }) => at(name))
  return {
    name,
    measured: mean(measured),
    ours: mean(ours.map(({ perez }) => perez)),
    even: mean(ours.map(({ even }) => even)),
    off: Math.sqrt(mean(ours.map(({ perez }, i) => (perez - measured[i]!) ** 2))),
  }
})

/**
 * Sun on four upright planes, from what was measured on the horizontal. Pyranometers in the field are good to some 5 %; an even sky
 * would give the north, which sees no beam, 12 % too much.
 */
export const measuredSkyChecks: readonly Check[] = onPlanes.map(({ name, measured, ours }) =>
  relative(
    `sun on an upright plane facing ${name}, mean [W/m2]`,
    source,
    ours,
    measured,
    name === 'north' ? 0.02 : 0.06,
  ),
)
