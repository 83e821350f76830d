import { expect, test } from 'vitest'
import { wattproof } from './run.ts'

const review = (name: string) => wattproof(['review', `samples/systems/${name}.system.yaml`]).out.replace(/ +/g, ' ')

test('a review begins with what the system is made of, and its totals', () => {
  const head = review('cabin').split('Found:')[0]!
  expect(head).toContain('4 x Grebe 430, 2S2P, on Example MPPT 150/60')
  expect(head).toContain('4 x Example AGM 220, 2S2P')
  expect(head).toContain('1720 W of panels, 86 kg of panels, 3200 USD')
})

test('every limit has its margin', () => {
  // 2 x 39.1 V x (1 + 0.25 % x 45) are 87.0 V
  expect(review('cabin')).toContain('south: cold voltage, controller 87 of 150 V 42 % left')
  expect(review('hazards/four-in-series')).toMatch(/cold voltage, controller \d+ of 100 V NOT KEPT/)
})

test('how the battery is kept and when each load runs have a line', () => {
  const boat = review('boat')
  expect(boat).toMatch(/kept (?:inside|outside|not given)/)
  expect(boat).toMatch(/in the frost .* below -?\d+ °C/)
  expect(boat.split('Loads and other sources')[1]).toMatch(/\d+ W .* h a day (?:at any time|evening|day|night)/)
})

test('a system far too large says so', () => {
  expect(review('cabin').replace(/\s+/g, ' ')).toMatch(
    /Far larger than its loads: the panels give 6\.\d kWh on a mean day, and the loads take 0\.\d+ kWh; in October, the leanest month, \d\.\d against 0\.76\./,
  )
  expect(review('boat')).not.toContain('Far larger')
})
