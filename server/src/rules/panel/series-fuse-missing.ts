import { missingField } from '../missing-field.ts'

export const seriesFuseMissing = missingField({
  id: 'series-fuse-missing',
  reason: 'Without the maximum series fuse strings in parallel cannot be checked.',
  field: '/limits/series_fuse',
  message: 'No maximum series fuse: strings in parallel cannot be checked',
  shownAt: ({ stc }) => stc.isc,
})
