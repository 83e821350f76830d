import { execFileSync } from 'node:child_process'

/** The programs that tests start are built from the sources that are tested, where one is younger than the last build. */
export default function buildFirst(): void {
  execFileSync(process.execPath, ['.scripts/build.mjs', '--if-stale'], { stdio: ['ignore', 'ignore', 'inherit'] })
}
