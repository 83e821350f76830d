import { mainCurrent } from '../bank-current.ts'
import { mainInWords } from '../current-in-words.ts'
import { fuseThatCarries, mainPair } from '../main-pair.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const batteryFuseLow = reviewRule({
  id: 'battery-fuse-low',
  severity: 'warning',
  reason:
    'A fuse that opens in normal use leaves the boat dark, and gets replaced by a larger one that protects nothing.',
  source: 'design current at most the fuse (IEC 60364-4-43, from memory)',
  messages: {
    low: '{main}, times 1.25',
    noneFits: '{main}, times 1.25: more than the fuse of {fuse}',
  },

  check(system) {
    const { fuse } = system.system.battery
    const main = mainCurrent(system)
    const pair = mainPair(system)
    if (!fuse || !main || !pair || pair.design <= fuse.value) return null
    const correction = fuseThatCarries(system, pair)
    return correction
      ? { say: 'low', with: { main: mainInWords(main) }, suspects: [fuse], correction }
      : { say: 'noneFits', with: { main: mainInWords(main), fuse: said(fuse) }, suspects: [fuse] }
  },
})
