import type { PanelRule } from '../about.ts'

export const notPositive: PanelRule = {
  id: 'not-positive',
  severity: 'error',
  reason: 'A rating of zero or below cannot be; a sign or a digit slipped in.',
  source: 'definition of the ratings, IEC 61215 (from memory)',

  check({ stc, noct, size, weight, limits, mounting_frame, price, cells }) {
    const { pmax, vmp, imp, voc, isc, efficiency } = stc
    const fields = [pmax, vmp, imp, voc, isc, efficiency, noct.pmax, noct.vmp, noct.imp, noct.voc, noct.isc]
    fields.push(
      size.length,
      size.width,
      size.thickness,
      weight,
      mounting_frame.weight,
      limits.system_voltage,
      limits.series_fuse,
      price.amount,
    )
    return [...fields, cells.in_series, cells.parallel_strings].flatMap((field) =>
      field && field.value <= 0 ? [{ message: `${field.text} is not above zero`, suspects: [field] as const }] : [],
    )
  },
}
