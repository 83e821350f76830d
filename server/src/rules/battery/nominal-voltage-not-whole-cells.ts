import { figure } from '../../findings/message.ts'
import { cellsOf, chemistries } from '../../values/chemistry.ts'
import { batteryRule } from '../over.ts'

export const nominalVoltageNotWholeCells = batteryRule({
  id: 'nominal-voltage-not-whole-cells',
  severity: 'warning',
  reason: 'A battery is a whole number of cells.',
  source: 'trade values from memory, to be confirmed on the maker’s sheet',
  messages: {
    noMultiple: '{nominal} is not a multiple of {value} V, which a {name} cell has',
    perCell: '{nominal} over {cells} cells is {each}; a {name} cell has {value} V',
  },

  check(battery) {
    const { chemistry, nominal_voltage: nominal, cells_in_series: typed } = battery
    if (!chemistry || !nominal || nominal.value <= 0) return null
    const { name, cell } = chemistries[chemistry.value]
    const cells = typed ? typed.value : cellsOf(battery)
    const each = cells === undefined ? undefined : nominal.value / cells
    if (each !== undefined && cell[0] * 0.95 <= each && each <= cell[1] * 1.05) return null
    const suspects = [nominal, typed ?? chemistry] as const
    const value = cell[0]
    return each === undefined
      ? { say: 'noMultiple', with: { nominal, value, name }, suspects }
      : { say: 'perCell', with: { nominal, cells, each: figure(each, 'V'), name, value }, suspects }
  },
})
