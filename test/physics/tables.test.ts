import { expect, test } from 'vitest'
import { ampacity, metricAmpacity, metricCurrent } from '../../server/src/physics/ampacity.ts'
import { gaugeArea } from '../../server/src/physics/cable.ts'
import { transitions } from '../../server/src/physics/clearness-transitions.ts'

// source: 33 CFR 183.425, table 5: gauge, then the currents at 60, 75, 80, 90, 105, 125 and 200 °C
test.each([
  [18, '10 10 15 20 20 25 25'],
  [16, '15 15 20 25 25 30 35'],
  [14, '20 20 25 30 35 40 45'],
  [12, '25 25 35 40 45 50 55'],
  [10, '40 40 50 55 60 70 70'],
  [8, '55 65 70 70 80 90 100'],
  [6, '80 95 100 100 120 125 135'],
  [4, '105 125 130 135 160 170 180'],
  [3, '120 145 150 155 180 195 210'],
  [2, '140 170 175 180 210 225 240'],
  [1, '165 195 210 210 245 265 280'],
  [0, '195 230 245 245 285 305 325'],
  [-1, '225 265 285 285 330 355 370'],
  [-2, '260 310 330 330 385 410 430'],
  [-3, '300 360 385 385 445 475 510'],
])('gauge %i carries the current of the table', (gauge, currents) => {
  const area = gaugeArea(gauge) * 1.0001
  expect([60, 75, 80, 90, 105, 125, 200].map((rating) => ampacity(area, rating)).join(' ')).toBe(currents)
})

// source: ISO 13297, annex A (from memory): more copper and better insulation never carry less
test('the metric table grows along both sides, and each size is found', () => {
  for (const [i, [area, currents]] of metricCurrent.entries()) {
    expect([60, 70, 85, 105].map((rating) => metricAmpacity(area, rating))).toEqual(currents)
    expect(currents.length).toBe(4)
    expect([...currents].sort((a, b) => a - b)).toEqual(currents)
    const before = metricCurrent[i - 1]
    if (before) expect(currents.every((current, c) => current > before[1][c]!)).toBe(true)
  }
  expect(metricCurrent.map(([area]) => area)).toEqual([0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70])
})

// source: Aguiar, Collares-Pereira and Conde, Solar Energy 40 (1988): ten matrices of ten states, chances per mille
test('each row of the transitions is a distribution over ten steps', () => {
  expect(transitions).toHaveLength(10)
  for (const { rows, low, high } of transitions) {
    expect(low).toBeLessThan(high)
    expect(rows).toHaveLength(10)
    for (const row of rows) {
      expect(row).toHaveLength(10)
      expect(Math.abs(row.reduce((sum, one) => sum + one, 0) - 1000)).toBeLessThanOrEqual(6)
    }
  }
  expect(transitions.map(({ upTo }) => upTo).slice(0, -1)).toEqual([0.3, 0.35, 0.4, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7])
})
