/** A record with nothing to say about, except hints on what is left out. */
export const good = `format: 1
name: Dipper
stc: { pmax: 110 W, vmp: 18.6 V, imp: 5.92 A, voc: 22.1 V, isc: 6.31 A }
size: { length: 1190 mm, width: 540 mm }
`

/** Voc below Vmp: an error on /stc/voc. */
export const bad = good.replace('voc: 22.1 V', 'voc: 2.21 V')

/** A wrong field name: a warning, no error. */
export const doubtful = `${good}wieght: 2.2 kg\n`
