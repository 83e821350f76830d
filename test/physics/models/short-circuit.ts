import { currentAt, type Diode } from '../../../server/src/physics/single-diode.ts'

/** Short-circuit current [A]. */
export const shortCircuit = (d: Diode): number => currentAt(d, 0)
