import type { PanelRule } from '../about.ts'

export const rigidWithBendLimit: PanelRule = {
  id: 'rigid-with-bend-limit',
  severity: 'information',
  reason: 'A bend limit belongs to a flexible panel; a rigid one breaks.',
  source: 'common practice, no source',

  check({ construction, limits: { bend } }) {
    if (construction?.value !== 'rigid' || !bend || bend.value === 0) return null
    return { message: `A rigid panel has a bend limit of ${bend.text}`, suspects: [bend, construction] }
  },
}
