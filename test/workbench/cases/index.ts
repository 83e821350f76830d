import { writeFileSync } from 'node:fs'
import * as coexistence from './coexistence.ts'
import * as features from './features.ts'
import * as lifetime from './lifetime.ts'

const limit = 60_000

/**
 * Runs every case inside the extension host, beside the extension. Both the workbench and a desktop editor call this; the
 * report is for the test that waits outside.
 */
export async function run(): Promise<void> {
  const report: { name: string; ms: number; problem: string | null }[] = []
  for (const [name, attempt] of Object.entries({ ...features, ...coexistence, ...lifetime })) {
    const began = Date.now()
    const problem = await Promise.race([
      attempt().then(
        () => null,
        (error: unknown) => String((error as Error).stack ?? error),
      ),
      new Promise<string>((resolve) => setTimeout(() => resolve(`no end after ${limit} ms`), limit)),
    ])
    report.push({ name, ms: Date.now() - began, problem })
    console.log(`${problem ? 'FAILED' : 'passed'} ${name} ${Date.now() - began} ms ${problem ?? ''}`)
    writeFileSync(process.env.WATTPROOF_REPORT ?? 'report.json', JSON.stringify(report, null, 2))
  }
  const failed = report.filter(({ problem }) => problem)
  if (failed.length) throw new Error(`${failed.length} of ${report.length} cases failed`)
}
