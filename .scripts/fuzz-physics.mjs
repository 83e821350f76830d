// Fits diodes to random datasheets, credible ones and wild ones, and fails at the first that throws, gives a NaN or hangs.
// Usage: node .scripts/fuzz-physics.mjs [how many, 100000] [seed, 1]
import { load } from './load.mjs'

const [count = 100_000, seed = 1] = process.argv.slice(2).map(Number)
const { sheetComplaint, random, fitDiode } =
  await load(`export { sheetComplaint } from './test/physics/sheet-complaint.ts'
export { random } from './server/src/physics/random.ts'
export { fitDiode } from './server/src/physics/fit-diode.ts'`)

let state = seed
const between = (low, high) => {
  const draw = random(state)
  state = draw.state
  return low + draw.value * (high - low)
}
const oneOf = (values) => values[Math.floor(between(0, values.length))]

/** Mostly numbers that could stand in a datasheet; a tenth carries a slip of a factor, a sign or no number at all. */
function sheet() {
  const voc = 10 ** between(-1, 2.5)
  const isc = 10 ** between(-2, 1.5)
  const vmp = voc * between(0.45, 1.02)
  const imp = isc * between(0.45, 1.02)
  const pmax = vmp * imp * between(0.93, 1.07)
  const cells = oneOf([null, Math.ceil(voc / between(0.3, 1.2))])
  const ratings = {
    pmax,
    vmp,
    imp,
    voc,
    isc,
    cells,
    alpha: between(-1e-3, 2e-3),
    beta: between(-7e-3, 5e-4),
    gamma: between(-1e-2, 1e-3),
  }
  if (between(0, 1) < 0.1) {
    const name = oneOf(Object.keys(ratings))
    ratings[name] = oneOf([
      NaN,
      Infinity,
      -Infinity,
      0,
      1e-300,
      1e300,
      -ratings[name],
      ratings[name] * 10,
      ratings[name] / 10,
    ])
  }
  return ratings
}

let fits = 0
let slowest = 0
const began = performance.now()
for (let run = 0; run < count; run++) {
  const ratings = sheet()
  const start = performance.now()
  const complaint = sheetComplaint(ratings)
  slowest = Math.max(slowest, performance.now() - start)
  if (complaint !== null) {
    console.error(`sheet ${run} of seed ${seed}: ${complaint}\n${JSON.stringify(ratings)}`)
    process.exit(1)
  }
  if (fitDiode(ratings).ok) fits++
}
const seconds = ((performance.now() - began) / 1000).toFixed(1)
console.log(
  `${count} random datasheets in ${seconds} s, the slowest ${slowest.toFixed(1)} ms; ${fits} have a diode, the others a reason`,
)
