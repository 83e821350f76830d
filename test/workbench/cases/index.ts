import { writeFileSync } from 'node:fs'
import * as coexistence from './coexistence.ts'
import * as features from './features.ts'
import * as lifetime from './lifetime.ts'
import * as systems from './systems.ts'
import { runCases } from './run-cases.ts'

/** Both the workbench with a server and a desktop editor call this. */
export const run = () =>
  runCases({ ...features, ...systems, ...coexistence, ...lifetime }, (outcomes) =>
    writeFileSync(process.env.WATTPROOF_REPORT ?? 'report.json', JSON.stringify(outcomes, null, 2)),
  )
