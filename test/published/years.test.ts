import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { readTable } from './read-table.ts'

// The typical year of Greensboro (TMY3, see data/README.md), with which nothing was fitted: three systems, flat and steep, are
// reviewed with its hours and with nothing but its monthly means.
test('what goes unmet in a year made from monthly means is that of hourly weather within a factor of 1.5 or one point', () => {
  const folder = mkdtempSync(join(tmpdir(), 'years-'))
  const file = join(folder, 'greensboro.epw')
  const hours = readTable('greensboro-tmy3.csv').map(
    ({ month, air, global, normal, diffuse }) =>
      `2020,${month},1,1,60,?,${air},0,0,0,0,0,0,${global},${normal},${diffuse}`,
  )
  const head = ['LOCATION,Greensboro,-,USA,TMY3,000000,36.1,-79.95,-5,270', ...Array<string>(7).fill('HEADER')]
  writeFileSync(file, [...head, ...hours].join('\n'))
  const printed = execFileSync(process.execPath, ['.scripts/years.mjs', file, file, file], { encoding: 'utf8' })
  rmSync(folder, { recursive: true })
  expect(printed.match(/\| yes +\|/g)).toHaveLength(3)
  expect(printed).toContain('3 of 3 within a factor of 1.5 or one point')
})
