import { epwColumns, epwLines, numberIn } from './epw-lines.ts'
import { phrase, type Phrase } from '../wording/phrase.ts'

/** A year of hourly weather, gathered by month. */
export interface ClimateOfWeather {
  readonly name: string
  /** Degrees, north and east positive. */
  readonly latitude: number
  readonly longitude: number
  /** 12 numbers: solar energy on the horizontal on a mean day of the month [kWh/m2]. */
  readonly sun: readonly number[]
  /** 12 numbers each: mean of the days' highest and lowest air temperature [°C]. */
  readonly meanHigh: readonly number[]
  readonly meanLow: readonly number[]
  /** Lowest and highest air temperature of the file [°C]. */
  readonly coldest: number
  readonly hottest: number
  readonly hours: number
}

export type EpwReading =
  | { readonly climate: ClimateOfWeather; readonly problem?: undefined }
  | { readonly climate?: undefined; readonly problem: { readonly line: number; readonly message: Phrase } }

/** A month of fewer days does not speak for itself. */
const leastDays = 20

/**
 * Reads an EPW hourly weather file: header lines from LOCATION to DATA PERIODS, then a line an hour. Hours without a
 * reading (blank, or the values that stand for missing) are left out of their day's figures; days without a reading in
 * every hour are left out of the month's sun. Days of several years count one by one.
 *
 * @param text  the whole file
 * @returns     means and extremes by month, or the line that cannot be read and why
 * @source EnergyPlus Auxiliary Programs, "EnergyPlus Weather File (EPW) Data Dictionary", US Department of Energy, v24.1
 */
export function readEpw(text: string): EpwReading {
  const file = epwLines(text)
  if (!file) return wrong(0, phrase`An EPW file begins with a LOCATION line; this one does not.`)
  const { location, periods } = file
  const [latitude, longitude] = [numberIn(location[6]), numberIn(location[7])]
  if (!inside(latitude, 90) || !inside(longitude, 180))
    return wrong(
      0,
      phrase`The LOCATION line gives latitude "${location[6] ?? ''}" and longitude "${location[7] ?? ''}", which are no place on earth.`,
    )
  if (!periods) return wrong(0, phrase`The header of this EPW file lacks its last line, DATA PERIODS.`)
  if (numberIn(periods.cells[2]) !== 1)
    return wrong(
      periods.line,
      phrase`Line ${periods.line + 1} says that the file has ${periods.cells[2]?.trim()} lines an hour; only files of one line an hour are read.`,
    )
  const days = new Map<string, Day>()
  for (const { line, cells } of file.hours) {
    const [year, month, day] = [epwColumns.year, epwColumns.month, epwColumns.day].map((c) => numberIn(cells[c]))
    if (!(month! >= 1 && month! <= 12 && day! >= 1 && day! <= 31) || cells.length <= epwColumns.global)
      return wrong(line, phrase`Line ${line + 1} is no hour of an EPW file: it lacks a month, a day, or columns.`)
    const [air, global] = [numberIn(cells[epwColumns.air]), numberIn(cells[epwColumns.global])]
    gather(days, `${year}-${month}-${day}`, month!, air, global)
  }
  const months = Array.from({ length: 12 }, (_, m) => [...days.values()].filter((d) => d.month === m + 1))
  const thin = months.findIndex(
    (m) => m.filter((d) => d.sunHours === 24).length < leastDays || m.filter((d) => d.airHours > 0).length < leastDays,
  )
  if (thin >= 0)
    return wrong(
      file.count - 1,
      phrase`Month ${thin + 1} has fewer than ${leastDays} whole days of sun and temperature.`,
    )
  const mean = (pick: (day: Day) => number, use: (day: Day) => boolean) =>
    months.map((m) => average(m.filter(use).map(pick)))
  const withAir = (d: Day) => d.airHours > 0
  return {
    climate: {
      name: [location[1], location[3]]
        .map((s) => s?.trim())
        .filter(Boolean)
        .join(', '),
      latitude,
      longitude,
      sun: mean(
        (d) => d.sun / 1000,
        (d) => d.sunHours === 24,
      ),
      meanHigh: mean((d) => d.high, withAir),
      meanLow: mean((d) => d.low, withAir),
      coldest: Math.min(...[...days.values()].filter(withAir).map((d) => d.low)),
      hottest: Math.max(...[...days.values()].filter(withAir).map((d) => d.high)),
      hours: [...days.values()].reduce((sum, d) => sum + d.sunHours, 0),
    },
  }
}

interface Day {
  readonly month: number
  sun: number
  sunHours: number
  airHours: number
  high: number
  low: number
}

/** Air is above -70 and below 70 °C, radiation from 0 to below 9999 Wh/m2; all else stands for no reading. */
function gather(days: Map<string, Day>, key: string, month: number, air: number, global: number): void {
  const one = days.get(key) ?? { month, sun: 0, sunHours: 0, airHours: 0, high: -Infinity, low: Infinity }
  days.set(key, one)
  if (0 <= global && global < 9999) {
    one.sun += global
    one.sunHours++
  }
  if (-70 < air && air < 70) {
    one.airHours++
    one.high = Math.max(one.high, air)
    one.low = Math.min(one.low, air)
  }
}

const wrong = (line: number, message: Phrase): EpwReading => ({ problem: { line, message } })
const inside = (value: number, limit: number) => Number.isFinite(value) && Math.abs(value) <= limit
const average = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length
