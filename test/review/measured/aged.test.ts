import { expect, test } from 'vitest'
import { agedOnes } from '../../../server/src/review/measured/aged.ts'
import type { PowerLeft, Trend } from '../../../server/src/review/measured/power-left.ts'
import { lineThrough } from '../../../server/src/physics/line.ts'

type Point = readonly [years: number, left: number, uncertainty?: number]

/** What is left of the power of an array over the years, from Voc and Isc. */
function trend(points: readonly Point[], installed = false): Trend {
  const line =
    points.length > 1
      ? lineThrough(
          points.map(([years, left]) => [years, left] as const),
          0.005,
        )
      : null
  return {
    array: { entry: installed ? { installed: { value: '2020-06-01' } } : {} },
    points: points.map(([years, left, uncertainty = 0.03]) => ({
      years,
      left,
      uncertainty,
      from: 'ends of the curve',
      strings: [{ string: { readings: new Map() }, low: [] }],
    })),
    line,
  } as unknown as Trend
}

const aged = (points: readonly Point[], installed?: boolean) => {
  const one = trend(points, installed)
  const found = agedOnes([one], 0.05)
  return one.points.map(({ strings }: PowerLeft) => found.has(strings[0]!.string))
}

test.each<[string, readonly Point[], readonly boolean[]]>([
  ['one measurement', [[5, 0.9]], [false]],
  [
    '1 % a year over five years',
    [
      [0, 1],
      [5, 0.95],
    ],
    [false, true],
  ],
  [
    'the same over two',
    [
      [0, 1],
      [2, 0.98],
    ],
    [false, false],
  ],
  [
    'the same over two years and a half, still within what two days differ by',
    [
      [0, 1],
      [2.6, 0.974],
    ],
    [false, false],
  ],
  [
    'nothing lost',
    [
      [0, 1],
      [5, 1],
    ],
    [false, false],
  ],
  [
    '0.2 % a year, which a meter may make',
    [
      [0, 1],
      [20, 0.96],
    ],
    [false, false],
  ],
  [
    '8 % a year, faster than panels age',
    [
      [0, 1],
      [2, 0.84],
    ],
    [false, false],
  ],
  [
    'a gain',
    [
      [0, 0.95],
      [5, 1],
    ],
    [false, false],
  ],
  [
    'three on a line',
    [
      [0, 1],
      [2, 0.985],
      [4, 0.97],
    ],
    [false, false, true],
  ],
  [
    'three apart',
    [
      [0, 1],
      [2, 0.95],
      [4, 0.985],
    ],
    [false, false, false],
  ],
])('panels have aged where they show %s: %j', (_, points, expected) => {
  expect(aged(points)).toEqual(expected)
})
