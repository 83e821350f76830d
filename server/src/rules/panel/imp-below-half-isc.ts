import { panelRule } from '../about.ts'

export const impBelowHalfIsc = panelRule({
  id: 'imp-below-half-isc',
  severity: 'error',
  reason: 'The curve of a panel is bent outwards, so its full power is above half of the short-circuit current.',
  source: 'the I-V curve is concave, so its tangent at the maximum power point is above both of its ends',
  messages: {
    found: 'Imp {imp} is less than half of Isc {isc}',
  },

  check({ stc: { imp, isc } }) {
    if (!imp || !isc || imp.value <= 0 || imp.value * 2 >= isc.value) return null
    return { say: 'found', with: { imp, isc }, suspects: [imp, isc] }
  },
})
