import { assumedClimate } from '../physics/assumed-climate.ts'
import { climateText } from '../records/climate-text.ts'
import { readEpw } from '../records/epw.ts'

/**
 * A climate record gathered by month from a file of hourly weather (EPW).
 *
 * @param name  of the file
 */
export function climateFromWeather(
  name: string,
  text: string,
): { readonly text: string } | { readonly problem: string } {
  const { climate, problem } = readEpw(text)
  if (problem) return { problem: `${name}:${problem.line + 1}: ${problem.message}` }
  const file = name.slice(name.lastIndexOf('/') + 1)
  return {
    text: climateText(climate, `${file}, ${climate.hours} hours of a weather year`, [
      'Gathered from an hourly weather file. Its extremes are those of one year:',
      'take coldest and hottest from a long record before a string voltage rests on them.',
    ]),
  }
}

/**
 * A climate record guessed from the latitude alone, which says so.
 *
 * @param latitude  [°], from -66 to 66, south negative
 */
export const climateFromLatitude = (latitude: number): string =>
  climateText(
    {
      ...assumedClimate(latitude),
      name: `Assumed climate at ${Math.abs(latitude)} degrees ${latitude < 0 ? 'south' : 'north'}`,
      latitude,
    },
    'ASSUMPTION: guessed from the latitude alone, not measured',
    [
      'ASSUMPTION, NOT MEASURED. Guessed from the latitude alone; a month can be off by a third and by 10 K.',
      'Replace it by figures of the place before anybody relies on a result.',
    ],
  )

/** Whether a climate can be guessed there. */
export const isLatitude = (typed: string): boolean => typed.trim() !== '' && Math.abs(Number(typed)) <= 66
