import type { Battery } from '../../records/records.generated.ts'
import { chemistries } from '../chemistry.ts'
import type { Rule } from '../rule.ts'

export const compensationOnLithium: Rule<Battery> = {
  id: 'compensation-on-lithium',
  severity: 'warning',
  reason:
    'Lithium cells are charged to the same voltage at any temperature; in the cold compensation would overcharge them.',
  source: 'trade values from memory, to be confirmed on the maker’s sheet',

  check({ chemistry, charge: { temperature_compensation: compensation } }) {
    if (!compensation || compensation.value === 0 || !chemistry || !chemistries[chemistry.value].lithium) return null
    return {
      message: `A temperature compensation of ${compensation.text} does not belong to ${chemistries[chemistry.value].name}`,
      suspects: [compensation, chemistry],
    }
  },
}
