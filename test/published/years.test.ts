import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { readTable } from './read-table.ts'

/** With none of which anything was fitted (see data/README.md): latitude, longitude and zone of each. */
const places = {
  'greensboro-tmy3': [36.1, -79.95, -5],
  'leuven-2021': [50.86, 4.68, 1],
  'colorado-2023': [40.51, -108.54, -7],
  'sand-point-tmy3': [55.32, -160.52, -9],
} as const

// Each with the three systems of the script, flat and steep, reviewed with its hours and with nothing but its monthly means.
test('twelve systems: what goes unmet in a year made from monthly means is that of hourly weather within a factor of 1.5 or one point', () => {
  const folder = mkdtempSync(join(tmpdir(), 'years-'))
  const files = Object.entries(places).flatMap(([name, where]) => {
    const file = join(folder, `${name}.epw`)
    const hours = readTable(`${name}.csv`).map(
      ({ month, air, global, normal, diffuse }) =>
        `2020,${month},1,1,60,?,${air},0,0,0,0,0,0,${global},${normal},${diffuse}`,
    )
    const head = [`LOCATION,${name},-,-,-,000000,${where.join(',')},0`, ...Array<string>(7).fill('HEADER')]
    writeFileSync(file, [...head, ...hours].join('\n'))
    return [file, file, file]
  })
  const printed = execFileSync(process.execPath, ['.scripts/years.mjs', ...files], { encoding: 'utf8' })
  rmSync(folder, { recursive: true })
  expect(printed.match(/\| yes +\|/g)).toHaveLength(12)
  expect(printed).toContain('12 of 12 within a factor of 1.5 or one point')
})
