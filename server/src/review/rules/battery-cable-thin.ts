import { short } from '../../rules/band.ts'
import { mainCurrent, mainInWords } from '../bank-current.ts'
import { ampacitySource } from '../cable-figures.ts'
import { cableThatCarries, mainPair } from '../main-pair.ts'
import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const batteryCableThin: ReviewRule = {
  id: 'battery-cable-thin',
  severity: 'error',
  reason: 'A cable that carries more than it is made for gets hot and starts a fire.',
  source: ampacitySource,

  check(system) {
    const own = system.system.battery.cable
    const main = mainCurrent(system)
    const pair = mainPair(system)
    if (!own.size || !main || !pair || pair.iz === null || pair.design <= pair.iz) return null
    const correction = cableThatCarries(system, pair)
    return {
      message: `${mainInWords(main)}, and ${said(own.size)} with ${said(own.insulation)} insulation may carry ${short(pair.iz)} A as a guide value`,
      suspects: [own.size],
      ...(correction && { correction }),
    }
  },
}
