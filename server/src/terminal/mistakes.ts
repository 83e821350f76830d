import { version } from '../../../package.json'
import type { Finding } from '../findings/finding.ts'
import type { World } from './world.ts'

/** Says on standard error where in the program a mistake of our own happened, for a report of it; nothing of the record. */
export function reportMistakes(world: World, path: string, findings: readonly Finding[]): void {
  for (const { trace } of findings)
    if (trace !== undefined) world.err(`wattproof ${version}: internal-error in ${path}: ${trace}\n`)
}
