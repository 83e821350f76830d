import { panelRule } from '../about.ts'
import { daysBetween } from '../../records/dates.ts'

export const datasheetOld = panelRule({
  id: 'datasheet-old',
  severity: 'information',
  reason: 'Makers change cells under one name; after some years the sheet is worth fetching again.',
  source: 'common practice, no source',
  messages: {
    old: 'The datasheet was typed on {typed}, more than three years ago',
  },

  check({ datasheet: { typed_on: typed } }, { today }) {
    const age = typed && daysBetween(typed.text, today)
    if (!typed || age === undefined || age <= 3 * 365) return null
    return { say: 'old', with: { typed }, suspects: [typed] }
  },
})
