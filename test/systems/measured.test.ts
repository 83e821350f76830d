import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { measuredOf } from '../../server/src/review/measured/measured.ts'
import { folder, libraryOf } from './library.ts'

const path = `${folder}/measured/day-sailer.system.yaml`
const { findings, review } = checkFile(libraryOf(), path, { today: '2026-11-25' })!

test('three dates of measurements have one planted fault, which is found where it is', () => {
  const { measurements } = review!.figures
  expect(new Set(measurements.map(({ date }) => date)).size).toBe(3)
  expect(findings.map(({ rule, severity, pointer }) => ({ rule, severity, pointer }))).toEqual([
    { rule: 'measurement-below-expected', severity: 'warning', pointer: '/measurements/2/strings/1/voc' },
  ])
  expect(findings[0]?.message).toContain('about one bypass diode of 4 conducts')
})

test('the string with the fault is named, and the others age', () => {
  const causes = review!.figures.measurements.map(({ date, string, cause }) => [date.slice(0, 4), string, cause])
  expect(causes).toEqual([
    ['2024', 1, null],
    ['2024', 2, null],
    ['2025', 1, 'aged'],
    ['2025', 2, 'aged'],
    ['2026', 1, 'aged'],
    ['2026', 2, 'bypass diode conducting'],
  ])
})

test('the power left falls by about 1.5 % a year and stays above the warranty', () => {
  const [trend] = measuredOf(review!.system).trends
  expect(trend?.points.map(({ left }) => Math.round(100 * left))).toEqual([98, 96, 95])
  expect(100 * trend!.line!.slope).toBeCloseTo(-1.5, 0)
  expect(trend?.crosses).toBeNull()
})
