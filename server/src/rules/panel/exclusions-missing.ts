import { panelRule } from '../about.ts'

export const exclusionsMissing = panelRule({
  id: 'exclusions-missing',
  severity: 'hint',
  reason: 'What voids the warranty decides whether it holds on a deck: curved mounting, foot traffic, salt water.',
  source: 'common practice, no source',
  messages: {
    missing: 'The warranty of a flexible panel is recorded without its exclusions',
  },

  check({ construction, warranty: { output, workmanship, exclusions } }) {
    const any = output[0]?.years ?? workmanship.years
    if (construction?.value !== 'flexible' || !any || exclusions.length > 0) return null
    return { say: 'missing', suspects: [any] }
  },
})
