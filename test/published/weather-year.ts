import {
  declination,
  extraterrestrialNormal,
  hourAngle,
  solarConstant,
  sunPosition,
} from '../../server/src/physics/sun.ts'
import type { SunHours } from '../../server/src/physics/sun-hours.ts'
import { readTable } from './read-table.ts'
import { monthlyWeather, type MonthlyWeather } from '../physics/models/monthly.ts'

export const latitude = 36.1
const longitude = -79.95
const meridian = -75

/** A typical year of Greensboro, by hours of its standard time, and what its months come to. */
export function weatherYear(): { hours: SunHours; months: MonthlyWeather } {
  const rows = readTable('greensboro-tmy3.csv')
  const column = (name: string) => Float64Array.from(rows, (row) => Number(row[name]))
  const month = column('month').map((m) => m - 1)
  const global = column('global')
  const air = column('air')
  const empty = () => new Float64Array(rows.length)
  const up = empty()
  const east = empty()
  const north = empty()
  const extraterrestrial = empty()
  for (let at = 0; at < rows.length; at++) {
    const day = Math.floor(at / 24) + 1
    const angle = hourAngle((at % 24) + 0.5, day, longitude, meridian)
    const { zenith, azimuth } = sunPosition(latitude, declination(day), angle)
    const [z, a] = [(zenith * Math.PI) / 180, (azimuth * Math.PI) / 180]
    up[at] = Math.cos(z)
    east[at] = Math.sin(z) * Math.sin(a)
    north[at] = Math.sin(z) * Math.cos(a)
    extraterrestrial[at] = extraterrestrialNormal(day, solarConstant)
  }
  const days = Array.from({ length: 365 }, (_, d) => ({ day: d + 1, month: month[24 * d]!, global: 0, diffuse: 0 }))
  const sky = { normal: column('normal'), diffuse: column('diffuse'), global, extraterrestrial, up, east, north, air }
  return { hours: { days, ...sky }, months: monthlyWeather({ month, global, air }) }
}
