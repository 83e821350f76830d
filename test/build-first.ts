import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/**
 * The programs that tests start are built from the sources that are tested, where one is younger than the last build. What they keep
 * from run to run goes with the tests.
 */
export default function buildFirst(): () => void {
  const cache = mkdtempSync(join(tmpdir(), 'wattproof-cache-'))
  process.env.WATTPROOF_TEST_CACHE = cache
  execFileSync(process.execPath, ['.scripts/build.mjs', '--if-stale'], { stdio: ['ignore', 'ignore', 'inherit'] })
  return () => rmSync(cache, { recursive: true, force: true })
}
