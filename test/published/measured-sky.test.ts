import { expect, test } from 'vitest'
import { onPlanes } from './measured-sky.checks.ts'

// Measured on the four sides of a house (see data/README.md), where the day's mean is 84 to 240 W/m2; the means are among the checks.
test.each(onPlanes)(
  'upright plane facing $name: half an hour is out by less than 30 W/m2 (root mean square)',
  ({ off }) => {
    expect(off).toBeLessThan(30)
  },
)

test('the north, which sees no beam, shows that the sky is not even: an even one gives it 10 % too much', () => {
  const north = onPlanes.find(({ name }) => name === 'north')!
  expect(north.even / north.measured).toBeGreaterThan(1.1)
  expect(Math.abs(north.ours / north.measured - 1)).toBeLessThan(0.02)
})
