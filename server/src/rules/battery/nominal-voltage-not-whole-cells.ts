import type { Battery } from '../../records/records.generated.ts'
import { short } from '../band.ts'
import { cellsOf, chemistries } from '../chemistry.ts'
import type { Rule } from '../rule.ts'

export const nominalVoltageNotWholeCells: Rule<Battery> = {
  id: 'nominal-voltage-not-whole-cells',
  severity: 'warning',
  reason: 'A battery is a whole number of cells.',
  source: 'trade values from memory, to be confirmed on the maker’s sheet',

  check(battery) {
    const { chemistry, nominal_voltage: nominal, cells_in_series: typed } = battery
    if (!chemistry || !nominal || nominal.value <= 0) return null
    const { name, cell } = chemistries[chemistry.value]
    const cells = typed ? typed.value : cellsOf(battery)
    const each = cells === undefined ? undefined : nominal.value / cells
    if (each !== undefined && cell[0] * 0.95 <= each && each <= cell[1] * 1.05) return null
    const off =
      cells === undefined ? `no whole number of ${name} cells` : `${short(each!)} V for each of ${cells} cells`
    return {
      message: `${nominal.text} are ${off}; a ${name} cell has ${cell[0]} V`,
      suspects: [nominal, typed ?? chemistry],
    }
  },
}
