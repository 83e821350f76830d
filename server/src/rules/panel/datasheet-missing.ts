import { missingField } from '../missing-field.ts'

export const datasheetMissing = missingField({
  id: 'datasheet-missing',
  reason: 'Without the name of the sheet nobody can look the numbers up again.',
  field: '/datasheet/source',
  message: 'No datasheet is named: nobody can look the numbers up again',
  shownAt: ({ name }) => name,
})
