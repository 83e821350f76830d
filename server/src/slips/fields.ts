import { index } from './evidence.ts'

/** Fields by what they are. */
export const electrical: readonly number[] = [index.pmax, index.vmp, index.imp, index.voc, index.isc]
export const coefficients: readonly number[] = [index.gamma, index.beta, index.alpha]
export const sides: readonly number[] = [index.length, index.width]
/** What differs from one power class of a family to the next. */
export const copiedFromOthers: readonly number[] = [
  ...electrical,
  index.efficiency,
  index.noctPmax,
  index.noctVmp,
  index.noctImp,
]
