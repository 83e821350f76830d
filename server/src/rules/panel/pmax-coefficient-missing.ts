import { missingField } from '../missing-field.ts'

export const pmaxCoefficientMissing = missingField({
  id: 'pmax-coefficient-missing',
  reason: 'Without the Pmax coefficient the power on a hot day is not known.',
  field: '/temperature_coefficients/pmax',
  message: 'No Pmax coefficient: the power on a hot day is not known',
  shownAt: ({ stc }) => stc.pmax,
})
