import type { Battery } from '../../records/records.generated.ts'
import { chemistries } from '../chemistry.ts'
import type { Rule } from '../rule.ts'

export const equalisingForbidden: Rule<Battery> = {
  id: 'equalising-forbidden',
  severity: 'error',
  reason: 'Equalising overcharges on purpose, which only liquid acid survives.',
  source: 'trade values from memory, to be confirmed on the maker’s sheet',

  check({ chemistry, charge: { equalise } }) {
    if (!equalise || !chemistry || chemistry.value === 'flooded' || chemistry.value === 'agm') return null
    return {
      message: `${chemistries[chemistry.value].name} must not be equalised, and ${equalise.text} is given for it`,
      suspects: [equalise, chemistry],
    }
  },
}
