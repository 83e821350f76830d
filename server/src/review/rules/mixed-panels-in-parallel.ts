import { figure } from '../../findings/message.ts'
import { lostIn } from '../mismatch-in-words.ts'
import { placeOf } from '../rule.ts'
import { sum, wholeStrings } from '../strings.ts'
import { reviewRule } from '../rule.ts'

export const mixedPanelsInParallel = reviewRule({
  id: 'mixed-panels-in-parallel',
  severity: 'warning',
  reason:
    'Strings in parallel share one voltage; the lower one is driven off its maximum power point and may even take current from the other.',
  source: '5 % is common practice, no source; loss from the curves of the panels, hour by hour',
  messages: {
    loses: '; {lost}, a controller each nothing',
    andOneCannot: ', and one cannot work at its maximum power point; a controller each loses nothing',
    found: 'Strings of {vmp} and {vmp2} are in parallel{part}',
  },

  check(system) {
    return system.arrays.flatMap((array) => {
      const strings = wholeStrings(array)
        .map((string) => ({ first: string[0]!, vmp: sum(string, ({ panel }) => panel?.record.stc.vmp?.value) }))
        .flatMap(({ first, vmp }) => (vmp === null ? [] : [{ first, vmp }]))
      const low = strings.reduce((a, b) => (b.vmp < a.vmp ? b : a), strings[0]!)
      const high = strings.reduce((a, b) => (a.vmp < b.vmp ? b : a), strings[0]!)
      const place = low?.first.entry.panel.id ?? placeOf(array)
      if (!low || !place || high.vmp <= 1.05 * low.vmp) return []
      const lost = lostIn(system, array)
      return [
        {
          say: 'found',
          with: {
            vmp: figure(low.vmp, 'V'),
            vmp2: figure(high.vmp, 'V'),
            part: lost ? { say: 'loses', with: { lost: lost.said } } : { say: 'andOneCannot' },
          },
          suspects: [place],
          ...(lost?.proposal && { correction: lost.proposal }),
        },
      ]
    })
  },
})
