import { expect, test } from 'vitest'
import { daysBetween, isDay } from '../../server/src/records/dates.ts'

test.each(['2024-02-29', '2000-02-29', '2026-12-31', '0026-01-01'])('%s is a day', (text) => {
  expect(isDay(text)).toBe(true)
})

test.each([
  '2026-02-29',
  '1900-02-29',
  '2026-04-31',
  '2026-13-01',
  '2026-00-10',
  '2026-01-00',
  '2026-1-1',
  '10 Jan 2026',
])('%s is no day', (text) => {
  expect(isDay(text)).toBe(false)
  expect(daysBetween('2026-01-01', text)).toBeUndefined()
})

test.each([
  { from: '2026-01-01', to: '2026-01-01', days: 0 },
  { from: '2024-02-28', to: '2024-03-01', days: 2 },
  { from: '2026-03-01', to: '2026-02-28', days: -1 },
  { from: '2000-01-01', to: '2100-01-01', days: 36525 },
])('$days days from $from to $to', ({ from, to, days }) => {
  expect(daysBetween(from, to)).toBe(days)
})
