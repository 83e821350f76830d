import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { reviewOf } from '../../server/src/check/review.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { createWorkspace } from '../../server/src/editor/workspace.ts'
import { darkHours } from '../../server/src/review/dark-hours.ts'
import { shortfallOf, yearOf } from '../../server/src/review/year.ts'
import { inland, strong, system } from './cases.ts'

const today = '2026-11-25'

/** Four panels on a small battery that leaves a little unmet in winter. */
const text = ({ lithium = 60, load = 'power: 60 W, hours: 6' }) => `format: 1
kind: cabin
site: { climate: ${inland}, coldest: -10 °C, hottest: 35 °C }
surfaces: [{ id: roof, size: { length: 9 m, width: 3 m }, mounting: open rack, tilt: 60 deg, azimuth: 180 deg }]
arrays:
  - panels: [{ panel: ${strong}, count: 4, surface: roof }]
    wiring: { in_series: 2, in_parallel: 2 }
    controller: { type: mppt, efficiency: 97 %, input: { max_voltage: 250 V }, output: { max_current: 60 A } }
battery:
  battery: { chemistry: lifepo4, nominal_voltage: 12.8 V, capacity: { amount: ${lithium} Ah }, charge: { max_current: 80 A } }
  in_parallel: 1
loads: [{ name: lamp, ${load} }]
`

function reviewed(source: string) {
  const library = createLibrary()
  library.put('own.system.yaml', source)
  const { figures, system } = reviewOf(library, library.file('own.system.yaml')!)!
  const found = checkFile(library, 'own.system.yaml', { today })!.findings.find(
    ({ rule }) => rule === 'battery-runs-empty',
  )
  const load = shortfallOf(yearOf(system)!)!.load
  return { figures, found, share: figures.year.unserved_wh! / load, worst: figures.year.unserved_p90_wh! / load }
}

test('of several years the one with the median of what goes unmet is shown, and the one of nine in ten', () => {
  const one = system({ panels: [strong, strong], lithium: 60, loads: '[{ name: all, power: 60 W, hours: 6 }]' })
  const { unserved, unservedP90, months, hours } = yearOf(one)!
  expect(hours!.unserved.reduce((sum, wh) => sum + wh, 0)).toBeCloseTo(unserved!, 6)
  const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
  const byMonths = months.reduce((sum, { unserved_wh_day: wh }, m) => sum + wh! * days[m]!, 0)
  expect(byMonths).toBeCloseTo(unserved!, 6)
  // fewer years give another one: it is none of them for good
  const first = yearOf({ ...one, years: 1 })!
  expect(first.unserved).toBe(first.unservedP90)
  expect(unserved).not.toBe(first.unserved)
  expect(unservedP90).toBeGreaterThan(unserved!)
})

// 1 % and 0.2 % of the load: common practice, no source
test('a warning from 1 % of the load, information from 0.2 %, nothing below', () => {
  const severities = [50, 55, 60, 65, 75, 100].map((lithium) => {
    const { share, found } = reviewed(text({ lithium }))
    const isLow = found?.message.includes('falls to') ?? false
    expect([share, isLow ? undefined : found?.severity]).toEqual([
      share,
      share < 0.002 ? undefined : share < 0.01 ? 'information' : 'warning',
    ])
    return isLow ? undefined : found?.severity
  })
  expect(new Set(severities)).toEqual(new Set(['warning', 'information', undefined]))
})

test('the message counts nights and days without light, and names the year of nine in ten beside the remedy', () => {
  const evening = reviewed(text({ load: 'power: 60 W, hours: 6, at: evening' }))
  expect(evening.worst).toBeGreaterThan(1.1 * evening.share)
  expect(evening.found!.message).toMatch(
    /^On \d+ nights of a usual year the battery is empty, .*: [\d.]+ % of the loads are not met, [\d.]+ % in one year of ten; add one in parallel\.$/,
  )
  const day = reviewed(text({ lithium: 50, load: 'power: 60 W, hours: 6, at: day' }))
  expect(day.found!.message).toMatch(/^On \d+ days of a usual year/)
})

test('a night runs from 18 to 6 h and counts once, over midnight too', () => {
  const dark = (...hours: readonly number[]) => {
    const unserved = new Float64Array(72)
    for (const h of hours) unserved[h] = 1
    return darkHours({ unserved, load: new Float64Array(72).fill(10) })
  }
  expect(dark()).toEqual({ days: 0, nights: 0 })
  expect(dark(18, 23, 24, 29)).toEqual({ days: 0, nights: 1 })
  expect(dark(17, 18)).toEqual({ days: 1, nights: 1 })
  expect(dark(30, 41, 54)).toEqual({ days: 2, nights: 0 })
})

test('in the editor one year counts while somebody types, and the others after the pause', () => {
  const workspace = createWorkspace(() => today)
  const path = 'file:///library/own.system.yaml'
  const message = () => workspace.check(path)!.findings.find(({ rule }) => rule === 'battery-runs-empty')!.message
  workspace.put(path, text({ load: 'power: 60 W, hours: 6, at: evening' }))
  workspace.takeStale()
  const whole = message()
  expect(whole).toContain('in one year of ten')
  workspace.put(path, `${text({ load: 'power: 60 W, hours: 6, at: evening' })}notes: moored\n`)
  expect(message()).not.toContain('in one year of ten')
  workspace.takeStale()
  expect(message()).toBe(whole)
})
