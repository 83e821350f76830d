import { panelRule } from '../about.ts'

export const notPositive = panelRule({
  id: 'not-positive',
  severity: 'error',
  reason: 'A rating of zero or below cannot be; a sign or a digit slipped in.',
  source: 'definition of the ratings, IEC 61215 (from memory)',
  messages: {
    positive: '{name} {field} is not above zero',
  },

  check({ stc, noct, size, weight, limits, mounting_frame, price }) {
    const fields = {
      Pmax: stc.pmax,
      Vmp: stc.vmp,
      Imp: stc.imp,
      Voc: stc.voc,
      Isc: stc.isc,
      'The efficiency': stc.efficiency,
      'Pmax at NOCT': noct.pmax,
      'Vmp at NOCT': noct.vmp,
      'Imp at NOCT': noct.imp,
      'Voc at NOCT': noct.voc,
      'Isc at NOCT': noct.isc,
      'The length': size.length,
      'The width': size.width,
      'The thickness': size.thickness,
      'The weight': weight,
      'The frame weight': mounting_frame.weight,
      'The system voltage': limits.system_voltage,
      'The series fuse': limits.series_fuse,
      'The price': price.amount,
    }
    return Object.entries(fields).flatMap(([name, field]) =>
      field && field.value <= 0 ? [{ say: 'positive', with: { name, field }, suspects: [field] }] : [],
    )
  },
})
