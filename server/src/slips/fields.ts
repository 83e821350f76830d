import { index } from './evidence.ts'

/** Fields by what they are. */
export const electrical: readonly number[] = [index.pmax, index.vmp, index.imp, index.voc, index.isc]
export const coefficients: readonly number[] = [index.gamma, index.beta, index.alpha]
export const sides: readonly number[] = [index.length, index.width]
