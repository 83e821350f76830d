import { arrayFigures } from './array-figures.ts'
import { batteryFigures } from './battery-figures.ts'
import type { Figures } from './figures.ts'
import { measurementFigures } from './measured/measurement-figures.ts'
import { notChecked } from './not-checked.ts'
import { yearOf } from './year.ts'
import type { ResolvedSystem } from './resolved.ts'
import type { Bundle } from '../wording/bundle.ts'

/** The figures of a system. Pure; nothing throws, and what cannot be known is null and named. */
export function figuresOf(system: ResolvedSystem, bundle?: Bundle): Figures {
  const year = yearOf(system)
  return {
    arrays: system.arrays.map((array, i) => arrayFigures(system, array, i)),
    battery: batteryFigures(system),
    months: year?.months ?? [],
    year: { unserved_wh: year?.unserved ?? null, unserved_p90_wh: year?.unservedP90 ?? null },
    measurements: measurementFigures(system),
    not_checked: notChecked(system, bundle),
  }
}
