import { short } from '../../rules/band.ts'
import { bankOf } from '../bank.ts'
import { elsewhere } from '../rule.ts'
import type { ReviewRule } from '../rule.ts'

/** 12.8 V and 14.4 V are called 12 V. */
const sameClass = (called: number, nominal: number) => 0.88 * called <= nominal && nominal <= 1.22 * called

export const batteryVoltageUnsupported: ReviewRule = {
  id: 'battery-voltage-unsupported',
  severity: 'error',
  reason: 'A controller made for another battery voltage overcharges the bank or does not charge it at all.',
  source: 'the makers’ sheets',

  check(system) {
    const bank = bankOf(system)
    if (!bank) return null
    return system.arrays.flatMap((array) => {
      const voltages = array.controller?.record.output.battery_voltages ?? []
      const place = array.entry.controller.id ?? voltages[0]
      if (!place || voltages.length === 0 || voltages.some((v) => sameClass(v.value, bank.voltage))) return []
      return [
        {
          message: `The bank has ${short(bank.voltage)} V, and the controller is made for ${voltages.map((v) => v.text).join(', ')}`,
          suspects: [place] as const,
          ...elsewhere(array.controller, voltages[0]),
        },
      ]
    })
  },
}
