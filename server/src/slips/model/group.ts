import type { Group } from './calibration.ts'
import type { Evidence } from '../evidence.ts'

const crystalline = ['mono', 'perc', 'topcon', 'hjt', 'back-contact']

/** The group that a record is compared with; a record that names no technology is taken as mono, by far the commonest. */
export const groupOf = ({ technology }: Evidence): Group =>
  technology === undefined || crystalline.includes(technology) ? 'mono' : technology === 'poly' ? 'poly' : 'thin'

/** Framed panels, of which there are open ratings; a record that names no construction is taken as one. */
export const isOfGlass = ({ construction }: Evidence): boolean => construction === undefined || construction === 'rigid'

/** Thin film counts its cells in ways that differ by maker. */
export const countsCells = (group: Group): boolean => group !== 'thin'
