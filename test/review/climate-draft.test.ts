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
