import { missingField } from '../missing-field.ts'

export const systemVoltageMissing = missingField({
  id: 'system-voltage-missing',
  reason: 'Without the maximum system voltage strings in series cannot be checked.',
  field: '/limits/system_voltage',
  message: 'No maximum system voltage: strings in series cannot be checked',
  shownAt: ({ stc }) => stc.voc,
})
