/** A record that agrees with itself. */
export const good = `format: 1
name: Tern 110
construction: flexible
cells: { technology: mono, in_series: 36 }
stc:
  pmax: 110 W
  vmp: 18.6 V
  imp: 5.92 A
  voc: 22.1 V
  isc: 6.31 A
size: { length: 1190 mm, width: 540 mm }
weight: 2.2
`

/** The same with the decimal point of Voc moved. */
export const slip = good.replace('voc: 22.1 V', 'voc: 2.21 V')

/** The same with a line that is not YAML. */
export const broken = good.replace('weight: 2.2', 'weight: [2.2')
