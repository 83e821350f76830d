import { short } from '../../rules/band.ts'
import { bankOf } from '../bank.ts'
import { elsewhere, placeOf } from '../rule.ts'
import type { ReviewRule } from '../rule.ts'

export const stringVoltageLow: ReviewRule = {
  id: 'string-voltage-low',
  severity: 'warning',
  reason: 'Hot panels give less voltage; below what the battery is charged at, the charge never completes.',
  source: 'headroom of 1 V to run is common practice, no source; voltage at maximum power by the sheet’s coefficients',

  check(system, figures) {
    const bank = bankOf(system)
    if (!bank) return null
    return system.arrays.flatMap((array, i) => {
      const vmp = figures.arrays[i]?.vmp_hot_v ?? null
      const place = placeOf(array)
      const type = array.controller?.record.type?.value
      if (vmp === null || !place || !type) return []
      const above = array.controller?.record.input.above_battery
      const needed = bank.charging + (type === 'pwm' ? 0.5 : 1)
      const toStart = type === 'mppt' && above ? bank.charging + above.value : needed
      if (toStart <= vmp && needed + 2 <= vmp) return []
      const what = `On a hot day the string works at ${short(vmp)} V`
      const charge = `the battery is charged at ${short(bank.charging)} V`
      const why =
        vmp < needed
          ? `too little: ${charge} and the controller needs ${short(needed - bank.charging)} V more`
          : vmp < toStart
            ? `and the controller starts only ${above?.text} above the battery, which is charged at ${short(bank.charging)} V`
            : `less than 2 V above what it needs, for ${charge}`
      const series = array.entry.wiring.in_series
      const each = vmp / (series?.value ?? 1)
      const enough = Math.ceil(toStart / each)
      return [
        {
          message: `${what}, ${why}${enough > (series?.value ?? 1) ? `; ${enough} in series give ${short(enough * each)} V` : ''}`,
          suspects: [place] as const,
          severity: vmp < needed ? ('warning' as const) : ('information' as const),
          ...elsewhere(array.controller, above),
        },
      ]
    })
  },
}
