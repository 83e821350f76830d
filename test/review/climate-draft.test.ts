import { expect, test } from 'vitest'
import { phraseInWords } from '../../server/src/wording/phrase.ts'
import { climateFromLatitude, climateFromWeather, isLatitude } from '../../server/src/review/climate-draft.ts'

test.each([
  ['43.5', true],
  ['-43.5', true],
  ['0', true],
  ['66', true],
  ['-66', true],
  ['66.1', false],
  ['-90', false],
  ['', false],
  [' ', false],
  ['Paris', false],
])('a climate can be guessed at a latitude of %j: %s', (typed, expected) => {
  expect(isLatitude(typed)).toBe(expected)
})

test.each([
  [43.5, 'Assumed climate at 43.5 degrees north'],
  [0, 'Assumed climate at 0 degrees north'],
  [-12, 'Assumed climate at 12 degrees south'],
])('one guessed at %f is called %j and says that it was not measured', (latitude, name) => {
  const text = climateFromLatitude(latitude)
  expect(text).toContain(name)
  expect(text).toContain('ASSUMPTION, NOT MEASURED.')
})

test('a file that is no weather is a problem with its place', () => {
  const made = climateFromWeather('weather/bay.epw', 'nothing\n')
  expect('problem' in made && phraseInWords(made.problem)).toMatch(/^weather\/bay\.epw:\d+: /)
})

const [day, hours] = [24, 8760]
/** A weather file of the same 20 °C in every hour, and the sun of a clear day. */
const weather = [
  'LOCATION,Bay,-,-,made,0,38.0,-9.0,0,10',
  ...Array<string>(6).fill('COMMENTS'),
  'DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31',
  ...Array.from({ length: hours }, (_, h) => {
    const date = new Date(Date.UTC(2021, 0, 1) + h * 3_600_000)
    const sun = Math.max(0, Math.round(800 * Math.sin(((h % day) - 6) * (Math.PI / 12))))
    const columns = [
      2021,
      date.getUTCMonth() + 1,
      date.getUTCDate(),
      (h % day) + 1,
      0,
      '?',
      20,
      10,
      50,
      101300,
      0,
      0,
      300,
      sun,
      sun,
      100,
    ]
    return [...columns, ...Array<number>(19).fill(0)].join()
  }),
].join('\n')

test.each(['bay.epw', 'weather/bay.epw', 'a/b/bay.epw'])(
  'one gathered from %s names the file without its folders',
  (name) => {
    const made = climateFromWeather(name, weather)
    expect('text' in made ? made.text : phraseInWords(made.problem)).toMatch(
      /[: ]bay\.epw, 8760 hours of a weather year/,
    )
  },
)
