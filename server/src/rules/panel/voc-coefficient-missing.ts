import { missingField } from '../missing-field.ts'

export const vocCoefficientMissing = missingField({
  id: 'voc-coefficient-missing',
  reason: 'Without the Voc coefficient the voltage of the coldest morning is not known.',
  field: '/temperature_coefficients/voc',
  message: 'No Voc coefficient: the voltage of the coldest morning is not known',
  shownAt: ({ stc }) => stc.voc,
})
