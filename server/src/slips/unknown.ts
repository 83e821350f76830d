import type { Candidate } from './candidates.ts'
import { sources, strains, type Frame } from './coherence.ts'
import { at } from './evidence.ts'
import { coordinate } from './features.ts'

const kind = -Math.log(17)

/**
 * Values that are wrong in a way which cannot be undone: another model's, or another kind of mistake. The field is put
 * where all others expect it; the chance counts all values that it could have had.
 */
export function unknown(frame: Frame, suspects: readonly number[]): readonly Candidate[] {
  const { z } = strains(frame)
  return sources.flatMap((places, c) => {
    const tightness = frame.core.tightness[c]!
    if (tightness === 0 || c === coordinate.cells || c === coordinate.area) return []
    return places.flatMap((place) => {
      if (!suspects.includes(place) || frame.absolute[place]) return []
      const sd = 1 / Math.sqrt(tightness)
      const shift = -z[c]! * sd
      const raw = place === at.gamma || place === at.beta || place === at.alpha ? 0.01 : place === at.noct ? 1 : 0
      const value = frame.values[place]!
      if (!raw && !(Math.abs(shift) < 3)) return []
      const usual = raw === 1 ? 20 : raw ? 0.4 : 0.24
      const range = usual * (1 + ((2 * shift) / usual) ** 2)
      return [
        {
          places: [place],
          values: [raw ? value + raw * shift : value * Math.exp(shift)],
          texts: [],
          why: 'another value',
          prior: kind - Math.log(5) + Math.log((sd * Math.sqrt(2 * Math.PI)) / range) - (raw ? 1 : 0),
        },
      ]
    })
  })
}
