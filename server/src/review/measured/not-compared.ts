import type { ResolvedSystem } from '../resolved.ts'
import { lackingOf } from './lacking.ts'
import { nameOf } from './in-words.ts'
import { phrase, type Phrase } from '../../wording/phrase.ts'

const costs = {
  sun: phrase`no irradiance was taken, so currents and power are compared between strings only`,
  cells: phrase`no temperature was taken, so voltages and power are compared between strings only`,
  both: phrase`neither irradiance nor temperature was taken, so strings are compared with each other only`,
} as const

/** Which comparisons what is missing costs, in sentences. */
export function* notCompared(system: ResolvedSystem): Generator<Phrase> {
  for (const measurement of system.measurements) {
    const { array, entry } = measurement
    const date = entry.date?.text ?? 'no date'
    if (!array) {
      yield phrase`Measured on ${date}: ${entry.array ? phrase`no array is called ${entry.array.text}` : phrase`the array is not named`}.`
      continue
    }
    const lacking = lackingOf(system, measurement)
    if (lacking?.conditions) yield phrase`Measured on ${date}, ${nameOf(array)}: ${costs[lacking.conditions]}.`
    for (const one of lacking?.records ?? [])
      yield phrase`Measured on ${date}, ${nameOf(array)}: the records lack ${one.what}, so ${one.costs}.`
  }
}
