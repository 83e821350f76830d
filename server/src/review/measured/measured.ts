import { onceEach } from '../../records/once-each.ts'
import type { ResolvedSystem } from '../resolved.ts'
import { accuracyOf } from './accuracy.ts'
import { agedOnes } from './aged.ts'
import { compareStrings } from './compare-strings.ts'
import type { Diagnosis } from './causes.ts'
import type { MeasuredFindings } from './measured-findings.ts'
import { diagnose } from './diagnose.ts'
import { height, isApart, lowValues } from './doubts.ts'
import { trendsOf, type Trend } from './power-left.ts'
import { readStrings } from './read-strings.ts'
import { slipsOf, type Slip } from './slip.ts'
import type { MeasuredString } from './string.ts'

export interface Measured {
  readonly strings: readonly MeasuredFindings[]
  readonly slips: readonly Slip[]
  /** How the power has gone, by array. */
  readonly trends: readonly Trend[]
}

/** All that was measured on the strings of a system, compared with its records. Pure; nothing throws. */
export const measuredOf = onceEach(work)

function work(system: ResolvedSystem): Measured {
  const accuracy = accuracyOf(system)
  const { limit } = accuracy
  const read = readStrings(system)
  const together = system.measurements.map((one) => read.filter(({ measurement }) => measurement === one))
  const slips = together.flatMap((strings) => slipsOf(strings))
  const mistyped = new Set(slips.flatMap((slip) => slip.strings.map(({ entry }) => entry)))
  const all = together.flatMap((strings) => compareStrings(strings, mistyped, accuracy))
  const first = all.map((string) => findingsOf(string))
  const trends = trendsOf(
    system,
    first.map((one) => (isShared(one) ? { ...one, diagnosis: null } : one)),
  )
  const aged = agedOnes(trends, limit)
  const strings = first.map((one) => (isShared(one) && aged.has(one.string) ? { ...one, diagnosis: asAged } : one))
  return { strings, slips, trends }

  /** Less current than the records expect, on all strings alike, may be age as well as dirt: the years show which. */
  function isShared({ diagnosis, string, isMistyped }: MeasuredFindings): boolean {
    return !isMistyped && !isApart(string, limit) && (diagnosis === null || diagnosis.cause === 'shade or dirt')
  }

  function findingsOf(string: MeasuredString): MeasuredFindings {
    const isMistyped = mistyped.has(string.entry)
    if (isMistyped) return { string, isMistyped, low: [], high: [], diagnosis: null }
    const low = lowValues(string, limit)
    const high = [...string.readings.values()].flatMap((reading) => height(reading, limit) ?? [])
    return { string, isMistyped, low, high, diagnosis: diagnose(string, low, { system, all }, limit) }
  }
}

const asAged: Diagnosis = { cause: 'aged' }
