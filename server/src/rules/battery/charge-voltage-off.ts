import { figure } from '../../findings/message.ts'
import { cellsOf, chemistries } from '../../values/chemistry.ts'
import { batteryRule } from '../over.ts'

export const chargeVoltageOff = batteryRule({
  id: 'charge-voltage-off',
  severity: 'warning',
  reason: 'Too high a charge voltage ruins a battery and may set it on fire; too low a one never fills it.',
  source: 'trade values from memory, to be confirmed on the maker’s sheet',
  messages: {
    above: 'above',
    below: 'below',
    off: 'A charge voltage of {voltage} is {cell} a cell, {part} the {value} to {voltage2} of {name}',
  },

  check(battery) {
    const { chemistry, charge } = battery
    const cells = cellsOf(battery)
    if (!chemistry || !charge.voltage || cells === undefined) return null
    const { name, lithium, charge: usual } = chemistries[chemistry.value]
    const cell = charge.voltage.value / cells
    if (usual[0] <= cell && cell <= usual[1] + 0.005) return null
    const high = usual[1] < cell
    return {
      say: 'off',
      with: {
        voltage: charge.voltage,
        cell: figure(cell, 'V'),
        part: high ? { say: 'above' } : { say: 'below' },
        value: figure(usual[0] * cells),
        voltage2: figure(usual[1] * cells, 'V'),
        name,
      },
      suspects: [charge.voltage, chemistry],
      severity: high && lithium ? 'error' : 'warning',
    }
  },
})
