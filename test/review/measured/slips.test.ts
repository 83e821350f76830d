import { expect, test } from 'vitest'
import { shifted } from '../../../server/src/review/measured/slip.ts'
import { normal } from './synthetic.ts'
import { reviewOf, type Built, type Day } from './day.ts'

test.each([
  { typed: '404 V', places: -1, meant: '40.4 V' },
  { typed: '0.495 A', places: 1, meant: '4.95 A' },
  { typed: '4.02V', places: 1, meant: '40.2V' },
  { typed: '5', places: 1, meant: '50' },
  { typed: '499 A', places: -2, meant: '4.99 A' },
  { typed: '78 W/m2', places: 1, meant: '780 W/m2' },
  { typed: '-4.02 V', places: 1, meant: '-40.2 V' },
])('$typed moved by $places is $meant', ({ typed, places, meant }) => {
  expect(shifted(typed, places)).toBe(meant)
})

test('what is no plain number is left alone', () => {
  expect(shifted('40.2 V at noon, 3 pm', 1)).toBe('402 V at noon, 3 pm')
  expect(shifted('about 40 V', 1)).toBeNull()
})

const arrays: readonly Built[] = [{ id: 'main', sheet: 'flexible', series: 2, strings: 3 }]

/** What one slip in a sound list of readings makes of it. */
function typed(seed: number, slip: (text: string) => string) {
  const next = normal(seed)
  const day: Day = { date: '2026-06-14', irradiance: 700 + 60 * next(), temperature: 50 + 5 * next() }
  const { yaml } = reviewOf(arrays, [day], seed)
  return reviewOf(arrays, [day], seed, true, slip(yaml)).findings
}

const slips: readonly { what: string; field: string; slip: (yaml: string) => string }[] = [
  {
    what: 'a decimal point of Voc',
    field: '/measurements/0/strings/1/voc',
    slip: (yaml) => yaml.replace(/(string: 2, voc: )(\d+)\.(\d)/, '$1$2$3'),
  },
  {
    what: 'a decimal point of Isc',
    field: '/measurements/0/strings/2/isc',
    slip: (yaml) => yaml.replace(/(string: 3, .*isc: )(\d)\.(\d)/, '$10.$2$3'),
  },
  {
    what: 'Voc and Vmp exchanged',
    field: '/measurements/0/strings/0/voc',
    slip: (yaml) => yaml.replace(/(string: 1, voc: )(\S+)(.*vmp: )(\S+)/, '$1$4$3$2'),
  },
  {
    what: 'a digit of the irradiance left out',
    field: '/measurements/0/irradiance',
    slip: (yaml) => yaml.replace(/irradiance: (\d\d)\d/, 'irradiance: $1'),
  },
]

test.each(slips)('$what is found where it is, alone, and its fix ends it', ({ field, slip }) => {
  for (let seed = 1; seed <= 20; seed++) {
    const found = typed(seed, slip)
    expect(found.map(({ rule, pointer }) => `${rule} ${pointer}`)).toEqual([`measurement-mistyped ${field}`])
    expect(found[0]!.corrections).toHaveLength(1)
  }
})
