// Runs the cases in a desktop editor. VSCODE_EXECUTABLE names one that is installed; without it, one is downloaded, in
// the version that VSCODE_VERSION names or the oldest that package.json promises. Linux without a screen: xvfb-run -a.
import { runTests } from '@vscode/test-electron'
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { bundleCases } from './driver/extensions.mjs'

const scratch = mkdtempSync(join(tmpdir(), 'wattproof-desktop-'))
const folder = join(scratch, 'folder')
const report = join(scratch, 'report.json')
const { engines } = JSON.parse(readFileSync('package.json', 'utf8'))
cpSync('samples', folder, { recursive: true })
try {
  await runTests({
    vscodeExecutablePath: process.env.VSCODE_EXECUTABLE,
    version: process.env.VSCODE_VERSION ?? engines.vscode.replace('^', ''),
    extensionDevelopmentPath: resolve('.'),
    extensionTestsPath: bundleCases(),
    extensionTestsEnv: { WATTPROOF_REPORT: report },
    launchArgs: [
      folder,
      ...['--disable-extensions', '--disable-workspace-trust', '--skip-welcome', '--skip-release-notes'],
      ...['--user-data-dir', join(scratch, 'user'), '--extensions-dir', join(scratch, 'extensions')],
    ],
  })
  for (const { name, ms } of JSON.parse(readFileSync(report, 'utf8'))) console.log(`passed ${name} ${ms} ms`)
} catch (error) {
  console.error(`The cases could not run or did not pass: ${error.message ?? error}`)
  process.exitCode = 1
} finally {
  rmSync(scratch, { recursive: true, force: true })
}
