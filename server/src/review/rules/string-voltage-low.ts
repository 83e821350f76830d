import { celsius, figure, type Said } from '../../findings/message.ts'
import type { ArrayFigures } from '../figures.ts'
import type { ResolvedArray, ResolvedSystem } from '../resolved.ts'
import { obstacle, voltageNeeded, wiringsThatWork } from '../rewire.ts'
import { elsewhere, placeOf } from '../rule.ts'
import { isUniform, stringVocHot } from '../strings.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const stringVoltageLow = reviewRule({
  id: 'string-voltage-low',
  severity: 'warning',
  reason: 'Hot panels give less voltage; below what the battery is charged at, the charge never completes.',
  source:
    'headroom of 1 V to run is common practice, no source; loaded, the voltage at maximum power counts and, to start, the open-circuit voltage, both by the sheet’s coefficients',
  messages: {
    tooLittle: '; the controller needs {run}',
    startsLater: ' (open {open}); the controller starts at {start} (battery + {above})',
    littleAbove: ', only {voltage} above the {run} that the controller needs',
    noString: '; no string of these panels suits this controller',
    longer: '. {series} in series give {hot} ({cold} at {coldest}){obstacle}',
    low: 'Hot, the string gives {vmp}{why}{more}',
  },

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
          ? { say: 'tooLittle', with: { run: figure(needed.run, 'V') } }
          : !starts
            ? {
                say: 'startsLater',
                with: { open: figure(open, 'V'), start: figure(needed.start, 'V'), above: said(above) },
              }
            : { say: 'littleAbove', with: { voltage: figure(vmp - needed.run, 'V'), run: figure(needed.run, 'V') } }
      return [
        {
          say: 'low',
          with: { vmp: figure(vmp, 'V'), why, more: vmp < needed.run || !starts ? more(system, array, own) : null },
          suspects: [place],
          severity: vmp < needed.run ? ('warning' as const) : ('information' as const),
          ...elsewhere(array.controller, above),
        },
      ]
    })
  },
})

/** More panels in series that would do, and whether the panels that are there make them up. */
function more(system: ResolvedSystem, array: ResolvedArray, figures: ArrayFigures): Said | null {
  const [first] = wiringsThatWork(system, array, figures).filter(
    (one) => one.series > (array.entry.wiring.in_series?.value ?? 1),
  )
  if (!first || first.hot === null) return isUniform(array) ? { say: 'noString' } : null
  return {
    say: 'longer',
    with: {
      series: first.series,
      hot: figure(first.hot, 'V'),
      cold: figure(first.cold, 'V'),
      coldest: celsius(system.coldest.value),
      obstacle: obstacle(array, figures, first.series),
    },
  }
}
