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
    thin: '{main}, times 1.25; {size} carries {iz}',
    noneCarries: '{size} with {insulation} insulation carries {iz}; {main}, times 1.25',
  },

  check(system) {
    const own = system.system.battery.cable
    const main = mainCurrent(system)
    const pair = mainPair(system)
    if (!own.size || !main || !pair || pair.iz === null || pair.design <= pair.iz) return null
    const correction = cableThatCarries(system, pair)
    const known = { main: mainInWords(main), size: said(own.size), iz: figure(pair.iz, 'A') }
    return correction
      ? { say: 'thin', with: known, suspects: [own.size], correction }
      : {
          say: 'noneCarries',
          with: { ...known, insulation: said(own.insulation) },
          suspects: [own.size],
        }
  },
})
