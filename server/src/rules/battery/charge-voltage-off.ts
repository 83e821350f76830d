import type { Battery } from '../../records/records.generated.ts'
import { short } from '../band.ts'
import { cellsOf, chemistries } from '../chemistry.ts'
import type { Rule } from '../rule.ts'

export const chargeVoltageOff: Rule<Battery> = {
  id: 'charge-voltage-off',
  severity: 'warning',
  reason: 'Too high a charge voltage ruins a battery and may set it on fire; too low a one never fills it.',
  source: 'trade values from memory, to be confirmed on the maker’s sheet',

  check(battery) {
    const { chemistry, charge } = battery
    const cells = cellsOf(battery)
    if (!chemistry || !charge.voltage || cells === undefined) return null
    const { name, lithium, charge: usual } = chemistries[chemistry.value]
    const cell = charge.voltage.value / cells
    if (usual[0] <= cell && cell <= usual[1] + 0.005) return null
    const high = usual[1] < cell
    return {
      message: `A charge voltage of ${charge.voltage.text} is ${short(cell)} V a cell, ${high ? 'above' : 'below'} the ${short(usual[0] * cells)} to ${short(usual[1] * cells)} V of ${name}`,
      suspects: [charge.voltage, chemistry],
      severity: high && lithium ? 'error' : 'warning',
    }
  },
}
