import { missingField } from '../missing-field.ts'

export const bendMissing = missingField({
  id: 'bend-missing',
  reason: 'Without a bend limit a curved surface cannot be checked.',
  field: '/limits/bend',
  message: 'No bend limit: a curved surface cannot be checked',
  shownAt: ({ construction, limits: { bend_radius: radius } }) =>
    construction?.value === 'flexible' && !radius ? construction : undefined,
})
