import { assumedClimate } from '../physics/assumed-climate.ts'
import { climateText } from '../records/climate-text.ts'
import { readEpw } from '../records/epw.ts'
import type { Bundle } from '../wording/bundle.ts'
import { phrase, sayIn, type Phrase } from '../wording/phrase.ts'

/**
 * A climate record gathered by month from a file of hourly weather (EPW).
 *
 * @param name  of the file
 */
export function climateFromWeather(
  name: string,
  text: string,
  bundle?: Bundle,
): { readonly text: string } | { readonly problem: Phrase } {
  const { climate, problem } = readEpw(text)
  if (problem) return { problem: phrase`${name}:${problem.line + 1}: ${problem.message}` }
  const say = sayIn(bundle)
  const file = name.slice(name.lastIndexOf('/') + 1)
  return {
    text: climateText(
      climate,
      say`${file}, ${climate.hours} hours of a weather year`,
      [
        say`Gathered from an hourly weather file. Its extremes are those of one year:`,
        say`take coldest and hottest from a long record before a string voltage rests on them.`,
      ],
      bundle,
    ),
  }
}

/**
 * A climate record guessed from the latitude alone, which says so.
 *
 * @param latitude  [°], from -66 to 66, south negative
 */
export function climateFromLatitude(latitude: number, bundle?: Bundle): string {
  const say = sayIn(bundle)
  const degrees = Math.abs(latitude)
  return climateText(
    {
      ...assumedClimate(latitude),
      name:
        latitude < 0
          ? say`Assumed climate at ${degrees} degrees south`
          : say`Assumed climate at ${degrees} degrees north`,
      latitude,
    },
    say`ASSUMPTION: guessed from the latitude alone, not measured`,
    [
      say`ASSUMPTION, NOT MEASURED. Guessed from the latitude alone; a month can be off by a third and by 10 K.`,
      say`Replace it by figures of the place before anybody relies on a result.`,
    ],
    bundle,
  )
}

/** Whether a climate can be guessed there. */
export const isLatitude = (typed: string): boolean => typed.trim() !== '' && Math.abs(Number(typed)) <= 66
