import { at } from './evidence.ts'

/** Places by what they are. */
export const electrical: readonly number[] = [at.pmax, at.vmp, at.imp, at.voc, at.isc]
export const coefficients: readonly number[] = [at.gamma, at.beta, at.alpha]
export const sides: readonly number[] = [at.length, at.width]
