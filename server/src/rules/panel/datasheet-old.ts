import type { PanelRule } from '../about.ts'
import { daysBetween } from '../../records/dates.ts'

export const datasheetOld: PanelRule = {
  id: 'datasheet-old',
  severity: 'information',
  reason: 'Makers change cells under one name; after some years the sheet is worth fetching again.',
  source: 'common practice, no source',

  check({ datasheet: { typed_on: typed } }, { today }) {
    const age = typed && daysBetween(typed.text, today)
    if (!typed || age === undefined || age <= 3 * 365) return null
    return { message: `The datasheet was typed on ${typed.text}, more than three years ago`, suspects: [typed] }
  },
}
