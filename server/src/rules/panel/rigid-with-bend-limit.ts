import { panelRule } from '../about.ts'

export const rigidWithBendLimit = panelRule({
  id: 'rigid-with-bend-limit',
  severity: 'information',
  reason: 'A bend limit belongs to a flexible panel; a rigid one breaks.',
  source: 'common practice, no source',
  messages: {
    found: 'A rigid panel has a bend limit of {bend}',
  },

  check({ construction, limits: { bend } }) {
    if (construction?.value !== 'rigid' || !bend || bend.value === 0) return null
    return { say: 'found', with: { bend }, suspects: [bend, construction] }
  },
})
