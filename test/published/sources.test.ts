import { execFileSync } from 'node:child_process'
import { expect, test } from 'vitest'
import { allChecks } from './all.checks.ts'

test('the script prints every published check, with its source', () => {
  const printed = execFileSync(process.execPath, ['.scripts/sources.mjs'], { encoding: 'utf8' })
  expect(printed).toContain(`\n${allChecks.length} checks, 0 outside\n`)
  for (const { check, source } of allChecks) expect(printed).toContain(`| ${check} | ${source} |`)
})
