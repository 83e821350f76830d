import { chemistries } from '../../values/chemistry.ts'
import { batteryRule } from '../over.ts'

export const equalisingForbidden = batteryRule({
  id: 'equalising-forbidden',
  severity: 'error',
  reason: 'Equalising overcharges on purpose, which gel and lithium do not survive; some AGM does.',
  source: 'trade values from memory, to be confirmed on the maker’s sheet',
  messages: {
    found: '{name} must not be equalised, and {equalise} is given for it',
  },

  check({ chemistry, charge: { equalise } }) {
    if (!equalise || !chemistry || chemistry.value === 'flooded' || chemistry.value === 'agm') return null
    return {
      say: 'found',
      with: { name: chemistries[chemistry.value].name, equalise },
      suspects: [equalise, chemistry],
    }
  },
})
