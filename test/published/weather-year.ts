import type { SunHours } from '../../server/src/physics/sun-hours.ts'
import { weatherSky } from '../../server/src/physics/weather-sky.ts'
import { readTable } from './read-table.ts'
import { monthlyWeather, type MonthlyWeather } from '../physics/models/monthly.ts'

export const latitude = 36.1

/** A typical year of Greensboro, by hours of its standard time, and what its months come to. */
export function weatherYear(): { hours: SunHours; months: MonthlyWeather } {
  const rows = readTable('greensboro-tmy3.csv')
  const column = (name: string) => Float64Array.from(rows, (row) => Number(row[name]))
  const [global, normal, diffuse, air] = [column('global'), column('normal'), column('diffuse'), column('air')]
  const month = column('month').map((m) => m - 1)
  const hours = weatherSky({ latitude, longitude: -79.95, zone: -5, month, global, normal, diffuse, air })
  return { hours, months: monthlyWeather({ month, global, air }) }
}
