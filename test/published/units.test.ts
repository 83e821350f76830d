import { expect, test } from 'vitest'
import { toBase } from '../../server/src/quantities/format.ts'

/**
 * NIST Special Publication 811 (2008), appendix B.8, "Factors for units listed alphabetically", as printed: seven
 * digits, or fewer where the factor is exact. The angle is turned round, for our base is the degree. Compared with
 * copies of that table, not with NIST's own pages; rows `from memory` were in none of them.
 */
const nist = 'NIST SP 811 (2008), B.8'
const remembered = `${nist}, from memory`
const ours = (unit: string) => toBase(1, unit)

test.each<{ source: string; name: string; computed: number; printed: number; exact?: true }>([
  { source: nist, name: 'inch to metre', computed: ours('in'), printed: 2.54e-2, exact: true },
  { source: nist, name: 'foot to metre', computed: ours('ft'), printed: 3.048e-1, exact: true },
  { source: remembered, name: 'square inch to square metre', computed: ours('in2'), printed: 6.4516e-4, exact: true },
  { source: nist, name: 'square foot to square metre', computed: ours('ft2'), printed: 9.290304e-2, exact: true },
  { source: nist, name: 'circular mil to square metre', computed: ours('kcmil') / 1000, printed: 5.067075e-10 },
  { source: nist, name: 'pound (avoirdupois) to kilogram', computed: ours('lb'), printed: 4.535924e-1 },
  { source: nist, name: 'ounce (avoirdupois) to kilogram', computed: ours('oz'), printed: 2.834952e-2 },
  { source: nist, name: 'degree (angle) to radian', computed: 1 / ours('rad'), printed: 1.745329e-2 },
  { source: nist, name: 'minute to second', computed: ours('min'), printed: 60, exact: true },
  { source: nist, name: 'hour to second', computed: ours('h'), printed: 3600, exact: true },
  { source: nist, name: 'day to second', computed: ours('days'), printed: 86400, exact: true },
  { source: nist, name: 'year (365 days) to second', computed: ours('years'), printed: 3.1536e7, exact: true },
  {
    source: remembered,
    name: 'kilowatt hour to joule',
    computed: ours('kWh') / ours('J'),
    printed: 3.6e6,
    exact: true,
  },
  { source: remembered, name: 'watt hour to joule', computed: ours('Wh') / ours('J'), printed: 3600, exact: true },
  { source: nist, name: 'tonne to kilogram', computed: ours('t'), printed: 1000, exact: true },
  {
    source: remembered,
    name: 'degree Fahrenheit interval to kelvin',
    computed: ours('°F') - toBase(0, '°F'),
    printed: 5.555556e-1,
  },
  {
    source: nist,
    name: 'kelvin to degree Celsius: t = T - 273.15',
    computed: toBase(273.15, 'K'),
    printed: 0,
    exact: true,
  },
  { source: `${nist}: t = (t_F - 32) / 1.8`, name: '212 °F', computed: toBase(212, '°F'), printed: 100, exact: true },
  {
    source: 'NIST SP 811 (2008), note 22 to B.8',
    name: 'exact pound',
    computed: ours('lb'),
    printed: 0.45359237,
    exact: true,
  },
  {
    source: 'derived: a fahrenheit is 1/1.8 K',
    name: '1 %/°F to 1/K',
    computed: ours('%/°F'),
    printed: 0.018,
    exact: true,
  },
])('$name ($source)', ({ computed, printed, exact }) => {
  const digits = exact ? 1e-14 : 5.1e-7
  expect(Math.abs(computed - printed)).toBeLessThanOrEqual(digits * Math.max(Math.abs(printed), 1e-12))
})

/** Nominal areas of ASTM B258 sizes in mm2, four digits (from memory). */
test.each([
  [18, 0.823],
  [14, 2.081],
  [12, 3.309],
  [10, 5.261],
  [8, 8.366],
  [6, 13.3],
  [4, 21.15],
  [2, 33.63],
  [0, 53.48],
  [-1, 67.43],
  [-2, 85.01],
  [-3, 107.2],
])('%d AWG is %d mm2 (ASTM B258, from memory)', (gauge, area) => {
  expect(Math.abs((toBase(gauge, 'AWG') * 1e6) / area - 1)).toBeLessThan(6e-4)
})
