import { familyRule } from '../about.ts'
import { others, type Other } from '../others.ts'

export const weightUnlikeSiblings = familyRule({
  id: 'weight-unlike-siblings',
  severity: 'information',
  reason: 'Power classes of one family are the same laminate, so panels of the same size weigh the same.',
  source: 'common practice, no source',
  messages: {
    found: 'The weight is {weight}, and {name} of the same size weighs {field}',
  },

  check({ weight, size, maker }, { siblings }) {
    // sheets of several makers share their figures, and not the weight
    if (!maker || !weight || weight.value <= 0 || !size.length || !size.width) return null
    const { length, width } = size
    const ofSize = siblings.filter(
      ({ record }) =>
        record.maker?.value === maker.value &&
        record.size.length?.value === length.value &&
        record.size.width?.value === width.value,
    )
    const all = others(ofSize, (panel) => panel.weight)
    const [first] = all
    const isFar = ({ field }: Other) => Math.abs(Math.log(field.value / weight.value)) > 0.15
    if (!first || !all.every(isFar)) return null
    return {
      say: 'found',
      with: { weight, name: first.name, field: first.field },
      suspects: [weight],
      elsewhere: all,
    }
  },
})
