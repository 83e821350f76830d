// Writes the calibrated relations of true module ratings from the open table; `--check` writes nothing and fails where one
// is stale. The table comes from public lists, see test/published/data/README.md.
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { groupOf, readRatings } from './calibrate/ratings.mjs'
import { bands } from './calibrate/bands.mjs'
import { calibrate } from './calibrate/groups.mjs'

const rows = readRatings('test/published/data/modules-open.csv').filter((row) => groupOf(row))
const note = '// Generated from the open module ratings by `npm run calibrate`; do not edit.'
const outputs = {
  'server/src/slips/model/calibration.generated.ts': [
    note,
    "import type { Calibration } from './calibration.ts'",
    '',
    `export const calibration: Calibration = ${await text(calibrate(rows))}`,
    '',
  ].join('\n'),
  'server/src/rules/bands.generated.ts': [
    note,
    '',
    '/** Percentiles of each ratio by group of technologies, in the order of `percents`; coefficients in %/K, NOCT in °C. */',
    'export const percents = [0.1, 0.5, 1, 5, 50, 95, 99, 99.5, 99.9] as const',
    '',
    `export const bands = ${await text(bands(rows))} as const`,
    '',
  ].join('\n'),
}

for (const [path, source] of Object.entries(outputs)) {
  if (existsSync(path) && readFileSync(path, 'utf8') === source) continue
  if (process.argv.includes('--check')) {
    console.error(`stale, run \`npm run calibrate\`: ${path}`)
    process.exitCode = 1
  } else writeFileSync(path, source)
}

async function text(value) {
  return JSON.stringify(await value, null, 1)
    .replace(/"(\w+)":/g, '$1:')
    .replace(/\[\s+([^[\]{}]*?)\s+\]/g, (_, inner) => `[${inner.replace(/\s+/g, ' ')}]`)
}
