import { expect, test } from 'vitest'
import { runTwice, type Store } from '../../server/src/physics/battery.ts'
import { drainOf, outlineTwice } from '../../server/src/physics/battery-outline.ts'
import { random } from '../../server/src/physics/random.ts'

const store: Store = {
  capacity: 1000,
  floor: 0.2,
  chargeEfficiency: 0.97,
  dischargeEfficiency: 0.97,
  mostIn: 300,
  mostOut: 400,
  acceptance: Infinity,
}

/** Sun from 8 to 17, more on some days than on others. */
function weather(seed: number, days: number, brightest: number): Float64Array {
  const produced = new Float64Array(24 * days)
  let state = seed
  for (let d = 0; d < days; d++) {
    const draw = random(state)
    state = draw.state
    for (let h = 8; h < 17; h++) produced[24 * d + h] = brightest * draw.value
  }
  return produced
}

test.each([
  { seed: 1, load: 5, brightest: 150, limits: {} },
  { seed: 2, load: 60, brightest: 150, limits: {} },
  { seed: 3, load: 40, brightest: 200, limits: { acceptance: 0.5 } },
  { seed: 4, load: 40, brightest: 200, limits: { mostOut: 30 } },
  { seed: 5, load: 90, brightest: 0, limits: {} },
])('year $seed: the outline comes to what every hour comes to', ({ seed, load, brightest, limits }) => {
  const battery = { ...store, ...limits }
  const produced = weather(seed, 60, brightest)
  const loads = new Float64Array(produced.length).fill(load)
  const hours = Int32Array.from([...produced.keys()].filter((h) => produced[h]! > 0))
  const into = { soc: new Float64Array(hours.length + 1), unserved: new Float64Array(hours.length + 1) }
  const outline = outlineTwice(
    battery,
    hours,
    Float64Array.from(hours, (h) => produced[h]!),
    drainOf(loads),
    into,
  )
  const full = runTwice(battery, 1, produced, loads)
  const unserved = full.unserved.reduce((sum, wh) => sum + wh, 0)
  expect(outline.unserved).toBeCloseTo(unserved, 6)
  expect(outline.least).toBeCloseTo(Math.min(...full.soc), 9)
  expect(unserved > 0).toBe(seed !== 1)
})
