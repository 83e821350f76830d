// Changes the source in small ways (mutants) and counts how many of them the tests notice. `npm run mutate [FOLDER...]` draws
// a seeded sample of about 1 000 mutants in all, lists those that survive, and keeps the figures beside the tests.
import { spawnSync } from 'node:child_process'
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'

/** Tests that a folder answers to, without those that start programs; and the share of its mutants that is drawn. */
const folders = {
  quantities: { tests: 'test/quantities/*.test.ts', share: 0.13 },
  physics: { tests: 'test/physics/*.test.ts test/published/*.test.ts', share: 0.1 },
  slips: {
    tests: 'test/slips/edits.test.ts test/slips/fa*.test.ts test/slips/fi*.test.ts test/slips/verdicts.test.ts',
    share: 0.1,
  },
  review: { tests: 'test/review/*.test.ts test/rules/*.test.ts test/systems/*.test.ts', share: 0.08 },
}
const kept = 'test/mutation/survivors.json'
const wanted = process.argv.slice(2)
mkdirSync('.output/mutate', { recursive: true })
mkdirSync('test/mutation', { recursive: true })

for (const [folder, { tests, share }] of Object.entries(folders)) {
  if (wanted.length > 0 && !wanted.includes(folder)) continue
  const report = `.output/mutate/${folder}.json`
  const config = `.output/mutate/${folder}.config.json`
  writeFileSync(
    config,
    JSON.stringify({
      testRunner: 'vitest',
      plugins: ['@stryker-mutator/vitest-runner', './.scripts/mutate/sample.mjs'],
      checkers: ['sample'],
      mutate: [`server/src/${folder}/**/*.ts`, '!**/*.generated.ts'],
      vitest: { configFile: 'test/vitest.mutate.config.mts' },
      coverageAnalysis: 'perTest',
      // a mutant in what runs once, while modules load, asks every test anew: too slow for a sample of this size
      ignoreStatic: true,
      concurrency: 2,
      reporters: ['json'],
      jsonReporter: { fileName: report },
      tempDirName: '.output/mutate/tmp',
      ignorePatterns: ['dist', '.output'],
    }),
  )
  const { status } = spawnSync('npx', ['stryker', 'run', config], {
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, MUTATE_TESTS: tests, MUTATE_SHARE: String(share) },
  })
  if (status !== 0) process.exit(status ?? 1)
  keep(folder, share, JSON.parse(readFileSync(report, 'utf8')))
}

function keep(folder, share, { files }) {
  const mutants = Object.entries(files).flatMap(([file, { source, mutants: of }]) =>
    of.map((mutant) => ({ ...mutant, file, line: mutant.location.start.line, code: textAt(source, mutant.location) })),
  )
  const count = (...statuses) => mutants.filter(({ status }) => statuses.includes(status)).length
  const [killed, survived] = [count('Killed', 'Timeout'), count('Survived', 'NoCoverage')]
  const all = read()
  all[folder] = {
    share,
    drawn: killed + survived,
    killed,
    survivors: mutants
      .filter(({ status }) => status === 'Survived' || status === 'NoCoverage')
      .map(({ file, line, code, replacement, status }) => ({ at: `${file}:${line}`, code, replacement, status })),
  }
  writeFileSync(kept, `${JSON.stringify(all, null, 1)}\n`)
  console.log(
    `${folder}: ${killed} of ${killed + survived} killed, ${((100 * killed) / (killed + survived)).toFixed(1)} %`,
  )
}

function read() {
  try {
    return JSON.parse(readFileSync(kept, 'utf8'))
  } catch {
    return {}
  }
}

function textAt(source, { start, end }) {
  const lines = source.split('\n').slice(start.line - 1, end.line)
  if (start.line !== end.line) return `${lines[0].slice(start.column - 1)} …`
  return lines[0].slice(start.column - 1, end.column - 1)
}
