// Runs the cases in a desktop editor. VSCODE_EXECUTABLE names one that is installed; without it, one is downloaded, in
// the version that VSCODE_VERSION names or the oldest that package.json promises. Linux without a screen: xvfb-run -a.
import { downloadAndUnzipVSCode, runTests } from '@vscode/test-electron'
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { bundleCases } from './driver/extensions.mjs'

const { VSCODE_EXECUTABLE: named, VSCODE_VERSION: version } = process.env
const { engines } = JSON.parse(readFileSync('package.json', 'utf8'))
const elsewhere = '`npm test` runs the same cases in a workbench that comes from the npm registry.'

class NoEditor extends Error {}

try {
  await runCases(await editor())
} catch (error) {
  console.error(error.message ?? error)
  process.exitCode = error instanceof NoEditor ? 3 : 1 // .ci/run takes a 3 for skipped
}

async function editor() {
  if (named !== undefined) {
    if (existsSync(named)) return named
    throw new Error(`VSCODE_EXECUTABLE names ${named}, and no program is there. ${elsewhere}`)
  }
  try {
    return await downloadAndUnzipVSCode(version ?? engines.vscode.replace('^', ''))
  } catch (error) {
    const ask = 'Set VSCODE_EXECUTABLE to the program of an installed one.'
    throw new NoEditor(`No VS Code can be downloaded here (${error.message ?? error}). ${ask} ${elsewhere}`, {
      cause: error,
    })
  }
}

async function runCases(vscodeExecutablePath) {
  const scratch = mkdtempSync(join(tmpdir(), 'wattproof-desktop-'))
  const folder = join(scratch, 'folder')
  const report = join(scratch, 'report.json')
  cpSync('samples', folder, { recursive: true })
  try {
    await runTests({
      vscodeExecutablePath,
      extensionDevelopmentPath: resolve('.'),
      extensionTestsPath: bundleCases(),
      extensionTestsEnv: { WATTPROOF_REPORT: report },
      launchArgs: [
        folder,
        ...['--disable-extensions', '--disable-workspace-trust', '--skip-welcome', '--skip-release-notes'],
        ...['--user-data-dir', join(scratch, 'user'), '--extensions-dir', join(scratch, 'extensions')],
      ],
    })
  } catch (error) {
    throw new Error(`The cases did not pass: ${error.message ?? error}`, { cause: error })
  } finally {
    for (const { name, ms, problem } of reported(report))
      console.log(`${problem ? 'FAILED' : 'passed'} ${name} ${ms} ms ${problem ?? ''}`.trim())
    rmSync(scratch, { recursive: true, force: true })
  }
}

/** Nothing where the editor ended before any case did. */
function reported(report) {
  return existsSync(report) ? JSON.parse(readFileSync(report, 'utf8')) : []
}
