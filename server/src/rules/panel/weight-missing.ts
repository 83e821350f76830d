import { missingField } from '../missing-field.ts'

export const weightMissing = missingField({
  id: 'weight-missing',
  reason: 'Without a weight the power per weight is not known.',
  field: '/weight',
  message: 'No weight: power per weight is not known',
  shownAt: ({ name }) => name,
})
