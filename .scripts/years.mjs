// Reviews a small off-grid system at the place of each weather file twice: with the hours of the file, and with nothing but
// their monthly means. Prints what goes unmet in both, and how far a day predicts the next.
//
//   npm run years -- FILE.epw...
import { readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { load } from './load.mjs'

const wp = await load(`export { createLibrary } from './server/src/library/create.ts'
export { reviewOf } from './server/src/check/review.ts'
export { readWeather } from './server/src/records/weather-file.ts'
export { monthlyWeather } from './test/physics/models/monthly.ts'
export { syntheticSunDays } from './server/src/physics/synthetic-days.ts'
export { dayToDay } from './test/physics/models/day-to-day.ts'`)

/** Ways to build: panels of 110 W, their tilt, ampere-hours of LiFePO4, and the load over the sun of the poorest month; tight,
 * so that something goes unmet. */
const kinds = [
  { panels: 2, tilt: 0, amperehours: 40, share: 1.6 },
  { panels: 4, tilt: 60, amperehours: 100, share: 0.9 },
  { panels: 4, tilt: 45, amperehours: 200, share: 1.15 },
]
const mean = (list) => list.reduce((a, b) => a + b, 0) / list.length

const files = process.argv.slice(2)
const lines = [
  ['place', 'latitude', 'system', 'load W', 'hours', 'means', 'one in ten', 'agrees', 'day to day', 'made'],
]
let agreeing = 0
for (const [i, file] of files.entries()) {
  const text = readFileSync(file, 'latin1')
  const weather = wp.readWeather(text)
  if (typeof weather === 'string') {
    console.error(`${file} ${weather}`)
    continue
  }
  const months = wp.monthlyWeather(weather)
  const kind = kinds[i % kinds.length]
  const poorest = Math.min(...months.sun) / 1000
  // a level panel gives some 0.8 of its rating an hour of full sun; one at 45 to 60 degrees half as much again in winter
  const load = Math.max(2, Math.round((kind.share * kind.panels * 110 * 0.8 * poorest * (kind.tilt ? 1.5 : 1)) / 24))
  const review = (hourly) => {
    const library = wp.createLibrary()
    library.put('/wattproof.yaml', 'format: 1\n')
    library.put('/place.climate.yaml', climateOf(weather, months, hourly))
    library.put('/one.system.yaml', systemOf(kind, load))
    library.put('/place.epw', text)
    return wp.reviewOf(library, library.file('/one.system.yaml')).figures
  }
  const [measured, made] = [review(true), review(false)]
  const share = (wh) => (100 * wh) / (load * 8760)
  const [real, usual, bad] = [measured.year.unserved_wh, made.year.unserved_wh, made.year.unserved_p90_wh].map(share)
  const agrees = Math.abs(real - usual) <= 1 || (real / 1.5 <= usual && usual <= 1.5 * real)
  if (agrees) agreeing++
  const seeds = Array.from({ length: 11 }, (_, k) => wp.syntheticSunDays(weather.latitude, months.sun, 1988 + k))
  const row = [
    basename(file, '.epw').slice(0, 24),
    weather.latitude.toFixed(1),
    `${kind.panels} x 110 W, ${kind.tilt}°, ${kind.amperehours} Ah`,
  ]
  const figures = [load.toFixed(0), ...[real, usual, bad].map((x) => `${x.toFixed(1)} %`), agrees ? 'yes' : 'NO']
  lines.push([
    ...row,
    ...figures,
    wp.dayToDay(daysOf(weather), weather.latitude).toFixed(2),
    mean(seeds.map((days) => wp.dayToDay(days, weather.latitude))).toFixed(2),
  ])
}
const widths = lines[0].map((_, c) => Math.max(...lines.map((line) => line[c].length)))
for (const line of lines) console.log(`| ${line.map((cell, c) => cell.padEnd(widths[c])).join(' | ')} |`)
console.log(`${agreeing} of ${lines.length - 1} within a factor of 1.5 or one point`)

function daysOf({ month, global }) {
  return Array.from({ length: Math.floor(month.length / 24) }, (_, d) => ({
    day: Math.min(365, d + 1),
    month: month[24 * d],
    global: global.slice(24 * d, 24 * d + 24).reduce((a, b) => a + b, 0),
  }))
}

function climateOf({ latitude }, { sun, air, coldest, hottest }, hourly) {
  return `format: 1
name: Place
latitude: ${latitude} deg
sun: [${sun.map((wh) => (wh / 1000).toFixed(3)).join(', ')}]
air:
  mean_high: [${air.high.map((t) => t.toFixed(1)).join(', ')}]
  mean_low: [${air.low.map((t) => t.toFixed(1)).join(', ')}]
  coldest: ${coldest} °C
  hottest: ${hottest} °C
${hourly ? 'hourly: place.epw\n' : ''}`
}

function systemOf({ panels, tilt, amperehours }, load) {
  return `format: 1
name: One
kind: cabin
site: { climate: place }
surfaces: [{ id: roof, size: { length: 9 m, width: 3 m }, mounting: open rack, tilt: ${tilt} deg, azimuth: 180 deg }]
arrays:
  - panels:
      - panel: { stc: { pmax: 110 W, vmp: 18.6 V, imp: 5.92 A, voc: 22.1 V, isc: 6.31 A }, cells: { in_series: 36 }, temperature_coefficients: { pmax: -0.38 %/°C, voc: -0.29 %/°C, isc: 0.05 %/°C }, size: { length: 1.19 m, width: 0.54 m } }
        count: ${panels}
        surface: roof
    wiring: { in_series: 2, in_parallel: ${panels / 2} }
    controller: { type: mppt, efficiency: 97 %, input: { max_voltage: 250 V }, output: { max_current: 60 A } }
battery:
  battery: { chemistry: lifepo4, nominal_voltage: 12.8 V, capacity: { amount: ${amperehours} Ah }, charge: { max_current: 80 A } }
  place: inside
  kept_above: 5 °C
loads: [{ name: all, power: ${load} W, hours: 24 }]
`
}
