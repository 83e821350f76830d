import { expect, test } from 'vitest'
import { assumedClimate } from '../../server/src/physics/assumed-climate.ts'
import { extraterrestrialDay, meanDays, solarConstant } from '../../server/src/physics/sun.ts'

test.each([-45, -10, 0, 10, 30, 43.5, 60, 66])('a guess for latitude %s stays within what a sky can do', (latitude) => {
  const { sun, meanHigh, meanLow, coldest, hottest } = assumedClimate(latitude)
  sun.forEach((energy, m) => {
    const clearness = (energy * 1000) / extraterrestrialDay(latitude, meanDays[m]!, solarConstant)
    expect(clearness).toBeGreaterThan(0.3)
    expect(clearness).toBeLessThan(0.6)
  })
  expect(coldest).toBeLessThan(Math.min(...meanLow))
  expect(hottest).toBeGreaterThan(Math.max(...meanHigh))
})

test('the seasons turn with the hemisphere', () => {
  const [north, south] = [assumedClimate(43.5), assumedClimate(-43.5)]
  expect(north.sun.indexOf(Math.max(...north.sun))).toBe(5)
  expect(south.sun.indexOf(Math.max(...south.sun))).toBe(11)
  expect(north.meanHigh[6]).toBeCloseTo(south.meanHigh[0]!, 6)
})

// Half of the way from 15 to 30 degrees the mean of the clearness is half of the way from 0.52 to 0.52 - 0.05.
test.each([
  [10, 0.52],
  [22.5, 0.495],
  [30, 0.47],
])('at latitude %s the sky lets %s through in the mean of the year', (latitude, mean) => {
  const clearness = assumedClimate(latitude).sun.map(
    (energy, m) => (energy * 1000) / extraterrestrialDay(latitude, meanDays[m]!, solarConstant),
  )
  expect(clearness.reduce((sum, one) => sum + one / 12, 0)).toBeCloseTo(mean, 6)
})
