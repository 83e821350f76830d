import { panelRule } from '../about.ts'

export const vmpBelowHalfVoc = panelRule({
  id: 'vmp-below-half-voc',
  severity: 'error',
  reason: 'The curve of a panel is bent outwards, so its full power is above half of the open-circuit voltage.',
  source: 'the I-V curve is concave, so its tangent at the maximum power point is above both of its ends',
  messages: {
    found: 'Vmp {vmp} is less than half of Voc {voc}',
  },

  check({ stc: { vmp, voc } }) {
    if (!vmp || !voc || vmp.value <= 0 || vmp.value * 2 >= voc.value) return null
    return { say: 'found', with: { vmp, voc }, suspects: [vmp, voc] }
  },
})
