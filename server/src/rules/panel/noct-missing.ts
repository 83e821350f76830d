import { missingField } from '../missing-field.ts'

export const noctMissing = missingField({
  id: 'noct-missing',
  reason: 'Without NOCT the cell temperature in the heat rests on an assumed 46 °C.',
  field: '/noct/temperature',
  message: 'No NOCT: the cell temperature in the heat rests on an assumed 46 °C',
  shownAt: ({ stc }) => stc.pmax,
})
