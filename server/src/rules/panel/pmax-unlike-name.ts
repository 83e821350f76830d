import { panelRule } from '../about.ts'
import { numbersIn } from '../words.ts'

export const pmaxUnlikeName = panelRule({
  id: 'pmax-unlike-name',
  severity: 'information',
  reason: 'The number in a model name is nearly always its power; another Pmax belongs to a sister model.',
  source: 'common practice, no source',
  messages: {
    found: 'The name "{name}" says {near}, and Pmax is {pmax}',
  },

  check({ name, stc: { pmax } }) {
    if (!name || !pmax || pmax.value <= 0) return null
    const numbers = numbersIn(name.text)
    const near = numbers.find((n) => n >= 10 && Math.abs(n / pmax.value - 1) < 0.25)
    if (near === undefined || numbers.some((n) => Math.abs(n - pmax.value) <= pmax.quantity.half)) return null
    return { say: 'found', with: { name, near, pmax }, suspects: [pmax, name] }
  },
})
