import { figure } from '../../findings/message.ts'
import { bankOf } from '../bank.ts'
import { elsewhere } from '../rule.ts'
import { reviewRule } from '../rule.ts'

/** 12.8 V and 14.4 V are called 12 V. */
const sameClass = (called: number, nominal: number) => 0.88 * called <= nominal && nominal <= 1.22 * called

export const batteryVoltageUnsupported = reviewRule({
  id: 'battery-voltage-unsupported',
  severity: 'error',
  reason: 'A controller made for another battery voltage overcharges the bank or does not charge it at all.',
  source: 'the makers’ sheets',
  messages: {
    unsupported: 'The bank has {voltage}, and the controller is made for {value}',
  },

  check(system) {
    const bank = bankOf(system)
    if (!bank) return null
    return system.arrays.flatMap((array) => {
      const voltages = array.controller?.record.output.battery_voltages ?? []
      const place = array.entry.controller.id ?? voltages[0]
      if (!place || voltages.length === 0 || voltages.some((v) => sameClass(v.value, bank.voltage))) return []
      return [
        {
          say: 'unsupported',
          with: { voltage: figure(bank.voltage, 'V'), value: { list: voltages } },
          suspects: [place],
          ...elsewhere(array.controller, voltages[0]),
        },
      ]
    })
  },
})
