import { figure } from '../../findings/message.ts'
import { mainCurrent } from '../bank-current.ts'
import { mainInWords } from '../current-in-words.ts'
import { ampacitySource } from '../cable-figures.ts'
import { cableThatCarries, mainPair } from '../main-pair.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const batteryCableThin = reviewRule({
  id: 'battery-cable-thin',
  severity: 'error',
  reason: 'A cable that carries more than it is made for gets hot and starts a fire.',
  source: ampacitySource,
  messages: {
    thin: '{main}; {size} with {insulation} insulation carries about {iz}',
  },

  check(system) {
    const own = system.system.battery.cable
    const main = mainCurrent(system)
    const pair = mainPair(system)
    if (!own.size || !main || !pair || pair.iz === null || pair.design <= pair.iz) return null
    const correction = cableThatCarries(system, pair)
    return {
      say: 'thin',
      with: {
        main: mainInWords(main),
        size: said(own.size),
        insulation: said(own.insulation),
        iz: figure(pair.iz, 'A'),
      },
      suspects: [own.size],
      ...(correction && { correction }),
    }
  },
})
