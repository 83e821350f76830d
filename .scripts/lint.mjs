// Every check that needs no build, one line each; the output of a check is shown where it fails.
import { spawnSync } from 'node:child_process'

const checks = {
  'generated files are fresh': ['node', '.scripts/generate.mjs', '--check'],
  'types, whole': ['npx', 'tsc', '-p', '.'],
  'types, layers without a machine': ['npx', 'tsc', '-p', 'server'],
  eslint: ['npx', 'eslint', '--config', '.scripts/eslint.config.mjs', 'client/src', 'server/src', 'test', '.scripts'],
  'import table': ['npx', 'depcruise', '--config', '.dependency-cruiser.mjs', 'server/src', 'client/src'],
  'nothing unused': ['npx', 'knip', '--config', '.scripts/knip.json'],
  layout: ['npx', 'prettier', '--check', '--log-level', 'warn', 'client', 'server', 'test', '.scripts', 'package.json'],
}

let failed = 0
for (const [name, [program, ...args]] of Object.entries(checks)) {
  const { status, stdout, stderr } = spawnSync(program, args, { encoding: 'utf8', maxBuffer: 1 << 26 })
  console.log(`${status === 0 ? 'passed' : 'FAILED'}  ${name}`)
  if (status !== 0) {
    failed++
    console.log(`${stdout}${stderr}`)
  }
}
console.log(`${Object.keys(checks).length - failed} checks passed, ${failed} failed`)
process.exitCode = failed ? 1 : 0
