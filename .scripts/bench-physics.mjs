// Times of the physics in a warm loop, and of the rules and the slip search on one record.
import { readFileSync } from 'node:fs'
import { load } from './load.mjs'

const from = {
  'physics/fit-diode': 'fitDiode',
  'physics/single-diode': 'curve, maxPower',
  'physics/power-table': 'powerTable',
  'physics/energy': 'panelEnergy',
  'physics/sun-days': 'yearSunDays',
  'physics/sun-hours': 'sunHours',
  'records/read': 'readFile',
  'check/check': 'checkFile',
  'library/create': 'createLibrary',
}
const contents = Object.entries(from)
  .map(([path, names]) => `export { ${names} } from './server/src/${path}.ts'`)
  .join('\n')
const wp = await load(contents)

/** Median time of one call over several rounds [ms]. */
function time(what, calls, work) {
  for (let i = 0; i < calls; i++) work()
  const rounds = Array.from({ length: 9 }, () => {
    const began = performance.now()
    for (let i = 0; i < calls; i++) work()
    return (performance.now() - began) / calls
  }).sort((a, b) => a - b)
  console.log(`${what.padEnd(52)} ${(1000 * rounds[4]).toFixed(1).padStart(9)} µs`)
}

const sheet = {
  pmax: 110,
  vmp: 18.6,
  imp: 5.92,
  voc: 22.1,
  isc: 6.31,
  cells: 36,
  alpha: 0.0005,
  beta: -0.0029,
  gamma: -0.0038,
}
time('fit of a datasheet', 2000, () => wp.fitDiode(sheet))
const { params } = wp.fitDiode(sheet)
time('maximum power point', 2000, () => wp.maxPower(params))
time('curve of 100 points', 500, () => wp.curve(params, 100))
const sun = [1.6, 2.5, 3.9, 4.8, 5.7, 6.2, 6.1, 5.4, 4.3, 2.8, 1.8, 1.4].map((h) => 1000 * h)
const air = { high: new Array(12).fill(20), low: new Array(12).fill(10) }
const hours = wp.sunHours(43.5, wp.yearSunDays(43.5, sun), air)
const mount = { plane: { tilt: 20, azimuth: 160 }, k: 0.055, shading: 0.1, albedo: 0.2, ar: 0.16 }
time('sun of 8 760 hours, shared by all arrays', 20, () => wp.sunHours(43.5, wp.yearSunDays(43.5, sun), air))
// with a fresh table of the panel's power, whose points the year works out
time('year of 8 760 hours of one array', 20, () => wp.panelEnergy(hours, mount, wp.powerTable(params)))

for (const [what, path] of [
  ['clean record', 'samples/library/panels/tern-110.panel.yaml'],
  ['record with a slip', 'samples/mistakes/decimal-point-moved.panel.yaml'],
]) {
  const text = readFileSync(path, 'utf8')
  const library = wp.createLibrary()
  library.put(path, text)
  const file = library.file(path)
  time(`reading a ${what}`, 100, () => wp.readFile(path, text))
  time(`all rules and the slip search on a ${what}`, 100, () =>
    wp.checkFile(library, file.path, { today: '2026-11-25' }),
  )
}
