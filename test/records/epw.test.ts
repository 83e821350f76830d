import { expect, test } from 'vitest'
import { climateText } from '../../server/src/records/climate-text.ts'
import { readEpw } from '../../server/src/records/epw.ts'
import { readFile } from '../../server/src/records/read.ts'

const header = (place = 'LOCATION,Example Bay,-,Example Land,invented,000000,43.50,-1.50,1.0,5.0') => [
  place,
  ...Array.from({ length: 7 }, (_, i) => `HEADER ${i}`),
]
const monthDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]

/** A whole year in which the sun shines for 10 hours at 100 W/m2 times the month, and the air swings around the month. */
const year = (change: (cells: string[], hour: number) => void = () => {}) =>
  monthDays.flatMap((days, m) =>
    Array.from({ length: days * 24 }, (_, h) => {
      const hour = h % 24
      const air = m + (hour === 14 ? 5 : hour === 4 ? -5 : 0)
      const cells = [
        '2001',
        String(m + 1),
        String(Math.floor(h / 24) + 1),
        String(hour + 1),
        '0',
        'flags',
        String(air),
        '0',
        '50',
        '101000',
        '0',
        '0',
        '300',
        String(hour >= 7 && hour < 17 ? 100 * (m + 1) : 0),
      ]
      change(cells, h)
      return cells.join(',')
    }),
  )

test('months are gathered: energy a day, mean highs and lows, extremes', () => {
  const { climate } = readEpw([...header(), ...year(), ''].join('\r\n'))
  expect(climate?.name).toBe('Example Bay, Example Land')
  expect(climate?.sun).toEqual(Array.from({ length: 12 }, (_, m) => m + 1))
  expect(climate?.meanHigh[3]).toBe(8)
  expect(climate?.meanLow[0]).toBe(-5)
  expect([climate?.coldest, climate?.hottest, climate?.hours]).toEqual([-5, 16, 8760])
})

test('hours without a reading are left out, and their day of sun too', () => {
  const lines = year((cells, h) => {
    if (h === 12) cells[13] = '9999'
    if (h === 38) cells[6] = '99.9'
  })
  const { climate } = readEpw([...header(), ...lines].join('\n'))
  expect(climate?.sun[0]).toBe(1)
  expect(climate?.hottest).toBe(16)
})

test.each([
  ['no weather file', 'name: Tern 110', 0, 'begins with a LOCATION line'],
  [
    'a place off the earth',
    [...header('LOCATION,X,-,Y,Z,0,143.5,-1.5,1,5'), ...year()].join('\n'),
    0,
    'latitude "143.5"',
  ],
  ['a line of words', [...header(), ...year().slice(0, 100), 'end of data'].join('\n'), 108, 'Line 109 is no hour'],
  ['half a year', [...header(), ...year().slice(0, 4000)].join('\n'), 4007, 'Month 6 has fewer than 20 whole days'],
])('%s is refused with its line', (_, text, line, message) => {
  expect(readEpw(text).problem).toEqual({ line, message: expect.stringContaining(message) as string })
})

test('the climate record that it becomes is read without a finding', () => {
  const { climate } = readEpw([...header(), ...year()].join('\n'))
  const text = climateText(climate!, 'example.epw: invented hours', ['One year only'])
  const file = readFile('example-bay.climate.yaml', text)
  expect(file?.readFindings).toEqual([])
  expect((file?.fields.get('/sun/5')?.value as number) ?? 0).toBe(6)
})
