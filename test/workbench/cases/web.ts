import * as coexistence from './coexistence.ts'
import * as features from './features.ts'
import * as systems from './systems.ts'
import { runCases } from './run-cases.ts'

/** A workbench that lives in a browser calls this; there a log is the only way out. */
export const run = () =>
  runCases({ ...features, ...systems, ...coexistence }, (outcomes) =>
    console.log(`outcomes ${JSON.stringify(outcomes)}`),
  )
