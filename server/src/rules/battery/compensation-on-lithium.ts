import { chemistries } from '../../values/chemistry.ts'
import { batteryRule } from '../over.ts'

export const compensationOnLithium = batteryRule({
  id: 'compensation-on-lithium',
  severity: 'warning',
  reason:
    'Lithium cells are charged to the same voltage at any temperature; in the cold compensation would overcharge them.',
  source: 'trade values from memory, to be confirmed on the maker’s sheet',
  messages: {
    found: 'A temperature compensation of {compensation} does not belong to {name}',
  },

  check({ chemistry, charge: { temperature_compensation: compensation } }) {
    if (!compensation || compensation.value === 0 || !chemistry || !chemistries[chemistry.value].lithium) return null
    return {
      say: 'found',
      with: { compensation, name: chemistries[chemistry.value].name },
      suspects: [compensation, chemistry],
    }
  },
})
