import type { Technology } from '../values/technology.ts'

/**
 * The best module of each technology that a certified table lists, in shares of the sun.
 *
 * @source M. A. Green et al., "Solar cell efficiency tables", Progress in Photovoltaics (versions 63 to 66, 2024 and 2025),
 *         module table; figures from memory where no report of the record could be read: c-Si 25.4 % was read in a report of
 *         October 2024, the rest is from memory and rounded up
 */
export const bestModule: Readonly<Record<Technology, number>> = {
  mono: 0.26,
  perc: 0.25,
  topcon: 0.26,
  hjt: 0.26,
  'back-contact': 0.26,
  poly: 0.21,
  cigs: 0.205,
  cdte: 0.205,
  'a-si': 0.13,
  gaas: 0.26,
  'thin-film': 0.26,
  perovskite: 0.22,
  tandem: 0.3,
  other: 0.26,
}
