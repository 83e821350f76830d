import { short } from '../../rules/band.ts'
import type { ArrayFigures } from '../figures.ts'
import type { ResolvedArray, ResolvedSystem } from '../resolved.ts'
import { obstacle, voltageNeeded, wiringsThatWork } from '../rewire.ts'
import { elsewhere, placeOf } from '../rule.ts'
import { isUniform, stringVocHot } from '../strings.ts'
import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const stringVoltageLow: ReviewRule = {
  id: 'string-voltage-low',
  severity: 'warning',
  reason: 'Hot panels give less voltage; below what the battery is charged at, the charge never completes.',
  source:
    'headroom of 1 V to run is common practice, no source; loaded, the voltage at maximum power counts and, to start, the open-circuit voltage, both by the sheet’s coefficients',

  check(system, figures) {
    return system.arrays.flatMap((array, i) => {
      const own = figures.arrays[i]
      const vmp = own?.vmp_hot_v ?? null
      const place = placeOf(array)
      const needed = voltageNeeded(system, array)
      if (!own || vmp === null || !place || !needed) return []
      const seeks = array.controller?.record.type?.value === 'mppt'
      const open = stringVocHot(system, array)
      const starts = open === null || needed.start <= open
      if (needed.run <= vmp && starts && (!seeks || needed.run + 2 <= vmp)) return []
      const above = array.controller?.record.input.above_battery
      const why =
        vmp < needed.run
          ? `too little: the controller needs ${short(needed.run)} V to charge the battery at ${short(needed.charging)} V`
          : !starts
            ? `and open it gives ${short(open)} V; the controller starts only at ${short(needed.start)} V, ${said(above)} above the battery being charged`
            : `only ${short(vmp - needed.run)} V above the ${short(needed.run)} V that the controller needs`
      return [
        {
          message: `On a hot day the string works at ${short(vmp)} V, ${why}${vmp < needed.run || !starts ? more(system, array, own) : ''}`,
          suspects: [place] as const,
          severity: vmp < needed.run ? ('warning' as const) : ('information' as const),
          ...elsewhere(array.controller, above),
        },
      ]
    })
  },
}

/** More panels in series that would do, and whether the panels that are there make them up. */
function more(system: ResolvedSystem, array: ResolvedArray, figures: ArrayFigures): string {
  const [first] = wiringsThatWork(system, array, figures).filter(
    (one) => one.series > (array.entry.wiring.in_series?.value ?? 1),
  )
  if (!first || first.hot === null) return isUniform(array) ? '; no string of these panels suits this controller' : ''
  return `; ${first.series} in series would give ${short(first.hot)} V, and ${short(first.cold)} V at ${system.coldest.value} °C${obstacle(array, figures, first.series) ?? ''}`
}
