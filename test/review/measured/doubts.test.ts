import { expect, test } from 'vitest'
import {
  height,
  isApart,
  lownessOfPower,
  lowness,
  lowValues,
  type Doubt,
} from '../../../server/src/review/measured/doubts.ts'
import type { MeasuredFindings } from '../../../server/src/review/measured/measured-findings.ts'
import type { Difference, MeasuredString, Quantity, Reading } from '../../../server/src/review/measured/string.ts'
import { verdictOf } from '../../../server/src/review/measured/verdict.ts'

/** The difference that IEC 62446-1 allows between what was measured and what is expected (from memory). */
const limit = 0.05

type Shares = Partial<Record<Quantity, { off?: number; apart?: number; uncertainty?: number }>>

const difference = (share: number | undefined, uncertainty: number): Difference | null =>
  share === undefined ? null : { share, uncertainty }

/** A string of which no more is known than how far its values are off the records and off those of its neighbours. */
function string(shares: Shares, power?: { off: number; uncertainty?: number }): MeasuredString {
  const readings = Object.entries(shares).map(([quantity, { off, apart, uncertainty = 0.02 }]) => [
    quantity,
    { quantity, value: 10, off: difference(off, uncertainty), apart: difference(apart, uncertainty) },
  ])
  return {
    readings: new Map(readings as [Quantity, Reading][]),
    power: power
      ? { value: 100, expected: 110, off: { share: power.off, uncertainty: power.uncertainty ?? 0.02 } }
      : null,
    limit,
  } as unknown as MeasuredString
}

const reading = (off?: number, apart?: number, uncertainty?: number) =>
  string({
    voc: {
      ...(off !== undefined && { off }),
      ...(apart !== undefined && { apart }),
      ...(uncertainty !== undefined && { uncertainty }),
    },
  }).readings.get('voc')

const short = (one: Doubt | null) => one && [one.against, one.severity]

test.each<[what: string, Reading | undefined, readonly string[] | null]>([
  ['nothing was measured', undefined, null],
  ['it is as expected', reading(0), null],
  ['it is 5 % lower than the records expect', reading(-0.05), null],
  ['it is 6 % lower than the records expect', reading(-0.06), ['records', 'warning']],
  ['it is 6 % higher', reading(0.06), null],
  ['it is 6 % lower where 7 % are uncertain', reading(-0.06, undefined, 0.07), null],
  ['it is 8 % lower where 7 % are uncertain', reading(-0.08, undefined, 0.07), ['records', 'warning']],
  ['it is 6 % lower than its neighbours', reading(0, -0.06), ['strings', 'warning']],
  ['it is 4 % lower than its neighbours', reading(0, -0.04), ['strings', 'information']],
  ['it is 3 % lower than its neighbours', reading(0, -0.03), null],
  ['it is 4 % lower than its neighbours where 5 % are uncertain', reading(0, -0.04, 0.05), null],
  ['it is 6 % higher than its neighbours', reading(0, 0.06), null],
  ['it is lower than both', reading(-0.06, -0.06), ['records', 'warning']],
])('a value is low where %s: %j', (_, one, expected) => {
  expect(short(lowness(one, limit))).toEqual(expected)
})

test.each([
  ['as expected', reading(0), null],
  ['5 % higher', reading(0.05), null],
  ['6 % higher', reading(0.06), ['records', 'warning']],
  ['6 % higher where 7 % are uncertain', reading(0.06, undefined, 0.07), null],
  ['6 % lower', reading(-0.06), null],
  ['unknown', reading(undefined, 0.2), null],
  ['not measured', undefined, null],
])('a value is high where it is %s', (_, one, expected) => {
  expect(short(height(one, limit))).toEqual(expected)
})

test.each([
  ['6 % low', string({ imp: { off: 0 } }, { off: -0.06 }), true],
  ['5 % low', string({ imp: { off: 0 } }, { off: -0.05 }), false],
  ['6 % low and uncertain by 7', string({ imp: { off: 0 } }, { off: -0.06, uncertainty: 0.07 }), false],
  ['6 % high', string({ imp: { off: 0 } }, { off: 0.06 }), false],
  ['low, and no current at it', string({ isc: { off: 0 } }, { off: -0.06 }), false],
  ['not known', string({ imp: { off: 0 } }), false],
])('power that is %s is shown at Imp: %s', (_, one, isShown) => {
  const found = lownessOfPower(one, limit)
  expect(found !== null).toBe(isShown)
  if (found) expect(found).toMatchObject({ against: 'records', power: { value: 100, expected: 110 } })
})

const low = (shares: Shares, power?: { off: number }) =>
  lowValues(string(shares, power), limit).map(
    ({ reading: { quantity }, against, power: all }) => `${quantity} ${against}${all ? ' power' : ''}`,
  )

test.each<[string, Shares, { off: number } | undefined, readonly string[]]>([
  ['Voc alone', { voc: { off: -0.1 }, isc: { off: 0 } }, undefined, ['voc records']],
  ['Voc and Vmp', { voc: { off: -0.1 }, vmp: { off: -0.1 } }, undefined, ['voc records']],
  ['Vmp alone', { voc: { off: 0 }, vmp: { off: -0.1 } }, undefined, ['vmp records']],
  ['Isc and Imp', { isc: { off: -0.1 }, imp: { off: -0.1 } }, { off: -0.1 }, ['isc records']],
  [
    'both ends',
    { voc: { off: -0.1 }, isc: { off: -0.1 }, imp: { off: -0.1 } },
    undefined,
    ['voc records', 'isc records'],
  ],
  ['the power alone', { voc: { off: 0 }, isc: { off: 0 }, imp: { off: -0.04 } }, { off: -0.08 }, ['imp records power']],
  ['Imp and the power', { isc: { off: 0 }, imp: { off: -0.08 } }, { off: -0.08 }, ['imp records power']],
  ['Isc a little beside its neighbours, Imp not', { isc: { apart: -0.035 }, imp: { apart: 0.01 } }, undefined, []],
  ['Isc and Imp a little beside them', { isc: { apart: -0.04 }, imp: { apart: -0.04 } }, undefined, ['isc strings']],
  ['Isc far beside them, Imp not', { isc: { apart: -0.08 }, imp: { apart: 0.01 } }, undefined, ['isc strings']],
])('of what is low one thing is reported: %s', (_, shares, power, expected) => {
  expect(low(shares, power)).toEqual(expected)
})

test.each<[Shares, boolean]>([
  [{ isc: { apart: -0.04 } }, true],
  [{ imp: { apart: -0.04 } }, true],
  [{ isc: { apart: -0.03 }, imp: { apart: -0.03 } }, false],
  [{ isc: { apart: -0.04, uncertainty: 0.05 } }, false],
  [{ isc: { apart: 0.04 } }, false],
  [{ voc: { apart: -0.1 }, vmp: { apart: -0.1 } }, false],
  [{ isc: { off: -0.1 } }, false],
])('a string with %j has another current than its neighbours: %s', (shares, expected) => {
  expect(isApart(string(shares), limit)).toBe(expected)
})

const found = (shares: Shares, more: Partial<MeasuredFindings> = {}): MeasuredFindings => {
  const one = string(shares)
  return { string: one, isMistyped: false, low: lowValues(one, limit), high: [], diagnosis: null, ...more }
}

test.each<[string, MeasuredFindings, Quantity, string]>([
  ['in order', found({ voc: { off: 0.01 } }), 'voc', 'in order'],
  ['only beside others', found({ voc: { apart: 0.01 } }), 'voc', 'in order'],
  ['with nothing to compare', found({ voc: {} }), 'voc', 'not compared'],
  ['low', found({ voc: { off: -0.1 } }), 'voc', 'low'],
  ['low with Voc', found({ voc: { off: -0.1 }, vmp: { off: -0.1 } }), 'vmp', 'low'],
  ['high without a doubt', found({ voc: { off: 0.1 } }), 'voc', 'in order'],
  ['mistyped', found({ voc: { off: -0.9 } }, { isMistyped: true }), 'voc', 'mistyped?'],
  [
    'a missing panel',
    found({ voc: { off: -0.5 }, isc: { off: 0 } }, { diagnosis: { cause: 'panel missing' } }),
    'voc',
    'low: panel missing',
  ],
  [
    'sound beside one',
    found({ voc: { off: -0.5 }, isc: { off: 0 } }, { diagnosis: { cause: 'panel missing' } }),
    'isc',
    'in order',
  ],
  [
    'aged, seen at Imp',
    found({ isc: { off: 0 }, imp: { off: -0.01 } }, { diagnosis: { cause: 'aged' } }),
    'imp',
    'aged',
  ],
  ['aged, without Imp', found({ isc: { off: -0.01 } }, { diagnosis: { cause: 'aged' } }), 'isc', 'aged'],
])('the verdict on a value that is %s', (_, one, quantity, expected) => {
  expect(verdictOf(one, one.string.readings.get(quantity)!)).toBe(expected)
})

test('a value that the records cannot give is high', () => {
  const one = found({ isc: { off: 0.2 } })
  const doubt = height(one.string.readings.get('isc'), limit)!
  expect(verdictOf({ ...one, high: [doubt] }, doubt.reading)).toBe('high')
})
