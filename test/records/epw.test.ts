import { expect, test } from 'vitest'
import { climateText } from '../../server/src/records/climate-text.ts'
import { readEpw } from '../../server/src/records/epw.ts'
import { readFile } from '../../server/src/records/read.ts'
import { phraseInWords } from '../../server/src/wording/phrase.ts'

/** The header as it is published: what stands in it beside the place is passed over, commas and all. */
const header = (
  place = 'LOCATION,Example Bay,-,Example Land,invented,000000,43.50,-1.50,1.0,5.0',
  periods = 'DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31',
) => [
  place,
  'DESIGN CONDITIONS,0',
  'TYPICAL/EXTREME PERIODS,1,Summer - Week Nearest Max Temperature For Period,Extreme,8/ 3,8/ 9',
  'GROUND TEMPERATURES,1,.5,,,,9.14,8.45,9.32,10.92,15.1,18.5,20.9,21.6,20.6,18.2,15.0,11.7',
  'HOLIDAYS/DAYLIGHT SAVINGS,Yes,0,0,0',
  'COMMENTS 1,invented hours, 2001, for a test',
  'COMMENTS 2, -- no place on earth',
  periods,
]
const monthDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]

/** A whole year in which the sun shines for 10 hours at 100 W/m2 times the month, and the air swings around the month. */
const year = (change: (cells: string[], hour: number) => void = () => {}) =>
  monthDays.flatMap((days, m) =>
    Array.from({ length: days * 24 }, (_, h) => {
      const hour = h % 24
      const air = m + (hour === 14 ? 5 : hour === 4 ? -5 : 0)
      const cells = [
        String(1990 + m), // a typical year is made of months of different years
        String(m + 1),
        String(Math.floor(h / 24) + 1),
        String(hour + 1),
        '60',
        '?9?9?9?9E0?9?9?9?9?9?9?9?9?9?9?9?9?9?9?9*9*9?9?9?9',
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

test.each([
  ['the words for missing', '9999', '99.9'],
  ['nothing', '', ' '],
  ['what cannot be', '-1', '-99.0'],
])('hours with %s are left out, and their day of sun too', (_, sun, air) => {
  const lines = year((cells, h) => {
    if (h === 12) cells[13] = sun
    if (h === 38) cells[6] = air
  })
  const { climate } = readEpw([...header(), ...lines].join('\n'))
  expect(climate?.sun[0]).toBe(1)
  expect([climate?.coldest, climate?.hottest]).toEqual([-5, 16])
  expect(climate?.hours).toBe(8760 - 12)
})

test('a leap year and several years are read day by day', () => {
  const leap = year()
    .filter((line) => line.startsWith('1991,2,28,'))
    .map((line) => line.replace(',2,28,', ',2,29,'))
  const second = year((cells) => {
    cells[0] = '2005'
    cells[13] = String(3 * Number(cells[13]))
  })
  expect(readEpw([...header(), ...year(), ...leap].join('\n')).climate).toMatchObject({
    hours: 8784,
    sun: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12],
  })
  const { climate } = readEpw([...header(), ...year(), ...second].join('\n'))
  expect([climate?.hours, climate?.sun[0], climate?.sun[11]]).toEqual([17520, 2, 24])
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
  [
    'four lines an hour',
    [...header(undefined, 'DATA PERIODS,1,4,Data,Sunday,1/1,12/31'), ...year()].join('\n'),
    7,
    'Line 8 says that the file has 4 lines an hour',
  ],
  ['no end of the header', [...header().slice(0, 7), ...year()].join('\n'), 0, 'lacks its last line, DATA PERIODS'],
  ['half a year', [...header(), ...year().slice(0, 4000)].join('\n'), 4007, 'Month 6 has fewer than 20 whole days'],
])('%s is refused with its line', (_, text, line, message) => {
  const { problem } = readEpw(text)
  expect(problem?.line).toBe(line)
  expect(phraseInWords(problem!.message)).toContain(message)
})

test('the climate record that it becomes is read without a finding', () => {
  const { climate } = readEpw([...header(), ...year()].join('\n'))
  const text = climateText(climate!, 'example.epw: invented hours', ['One year only'])
  const file = readFile('example-bay.climate.yaml', text)
  expect(file?.readFindings()).toEqual([])
  expect((file?.fields.get('/sun/5')?.value as number) ?? 0).toBe(6)
})
