import { panelRule } from '../about.ts'
import { inside } from '../band.ts'

export const guaranteedShareUnusual = panelRule({
  id: 'guaranteed-share-unusual',
  severity: 'warning',
  reason: 'Output warranties promise 80 to 98 % of the rated power; other numbers lost a digit or a unit.',
  source: 'common practice, no source',
  messages: {
    unusual: 'A guaranteed share of {share} is outside 50 to 100 %',
  },

  check({ warranty: { output } }) {
    return output.flatMap(({ at_least: share }) =>
      share && !inside(share.value, [0.5, 1]) ? [{ say: 'unusual', with: { share }, suspects: [share] as const }] : [],
    )
  },
})
