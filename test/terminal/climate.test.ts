import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { scratch, wattproof } from './run.ts'

const hours = Array.from({ length: 365 * 24 }, (_, h) => {
  const date = new Date(Date.UTC(2001, 0, 1, h))
  const cells = [
    2001,
    date.getUTCMonth() + 1,
    date.getUTCDate(),
    date.getUTCHours() + 1,
    0,
    'flags',
    10,
    0,
    50,
    101000,
    0,
    0,
    300,
    40,
  ]
  return cells.join(',')
})
const epw = [
  'LOCATION,Example Bay,-,Example Land,invented,0,43.50,-1.50,1.0,5.0',
  ...new Array<string>(6).fill('HEADER'),
  'DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31',
  ...hours,
]

test('an hourly weather file becomes a climate record that checks clean', () => {
  const cwd = scratch()
  writeFileSync(join(cwd, 'bay.epw'), epw.join('\n'))
  const made = wattproof(['new', 'climate', '--from', 'bay.epw', '-o', 'bay.climate.yaml'], { cwd })
  expect(made).toMatchObject({ code: 0, err: '' })
  const text = readFileSync(join(cwd, 'bay.climate.yaml'), 'utf8')
  expect(text).toContain('sun: [0.96, 0.96,')
  expect(text).toContain('take coldest and hottest from a long record')
  expect(wattproof(['check', '--fail-on', 'error'], { cwd }).code).toBe(0)
})

test('a climate from a bare latitude says loudly that it is assumed', () => {
  const { out, code } = wattproof(['new', 'climate', '--latitude', '43.5'])
  expect(code).toBe(0)
  expect(out).toContain('# ASSUMPTION, NOT MEASURED.')
  expect(out).toMatch(/^source: "ASSUMPTION/m)
})

test.each([
  [['new', 'climate', '--latitude', 'north'], 'a number of degrees from -66 to 66'],
  [['new', 'panel', '--latitude', '43'], '--latitude makes a climate record'],
  [['new', 'climate', '--from', 'nowhere.epw'], 'nowhere.epw cannot be read: it does not exist'],
])('%j could not run', (args, message) => {
  expect(wattproof(args, { cwd: scratch() })).toMatchObject({
    code: 2,
    err: expect.stringContaining(message) as string,
  })
})
