import { figure } from '../../findings/message.ts'
import { causeInWords, conditionsInWords, expectedOf, readingInWords, shareOf } from '../measured/in-words.ts'
import { measuredOf } from '../measured/measured.ts'
import type { MeasuredFindings } from '../measured/measured-findings.ts'
import type { Reading } from '../measured/string.ts'
import { reviewRule } from '../rule.ts'

export const measurementBelowExpected = reviewRule({
  id: 'measurement-below-expected',
  severity: 'warning',
  reason:
    'In the sun and warmth of the day a sound string gives what its records say; what it lacks shows what is wrong.',
  source:
    'translation to the conditions of the day: IEC 60891:2021, procedure 2; 5 % or the uncertainty of the comparison, whichever is more: IEC 62446-1 (from memory)',
  messages: {
    low: '{name} {value} is {share} below the {expected} expected at {conditions}{cause}',
    power: 'Vmp x Imp, {power}, is {share} below the {expected} expected at {conditions}{cause}',
    reversed: 'Voc {value} is negative: the string, or the meter, is the other way round; do not connect it as it is',
  },

  check(system) {
    const { strings } = measuredOf(system)
    return [
      ...strings.flatMap(({ string, isMistyped }) => {
        const voc = string.readings.get('voc')
        return !isMistyped && voc && voc.value < 0 ? [reversed(voc)] : []
      }),
      ...strings.flatMap((one) => lowOf(one, strings).map((doubt) => doubtOf(one, doubt))),
    ]
  },
})

/** Of a string that is reversed, or of another array, all values are to be expected, and strings age together: that is reported once. */
function lowOf(one: MeasuredFindings, strings: readonly MeasuredFindings[]) {
  const { string, low, diagnosis } = one
  if ((string.readings.get('voc')?.value ?? 0) < 0) return []
  const ofRecords = low.filter(({ against }) => against === 'records')
  if (diagnosis?.cause === 'string of another array') return ofRecords.slice(0, 1)
  const together = strings.find(
    (other) =>
      other.string.measurement === string.measurement && other.diagnosis?.cause === 'aged' && other.low.length > 0,
  )
  return diagnosis?.cause === 'aged' && together !== one ? [] : ofRecords
}

const reversed = ({ field }: Reading) => ({
  say: 'reversed' as const,
  with: { value: field },
  suspects: [field] as const,
  severity: 'warning' as const,
})

function doubtOf(one: MeasuredFindings, { reading, by, severity, power }: MeasuredFindings['low'][number]) {
  const shared = {
    share: shareOf(by.share),
    conditions: conditionsInWords(one, reading),
    cause: causeInWords(one),
  }
  const others = [...one.string.readings.values()].filter((other) => other !== reading).map(({ field }) => field)
  const more = { suspects: [reading.field, ...others] as const, severity }
  return power
    ? {
        say: 'power' as const,
        with: { power: figure(power.value, 'W'), expected: figure(power.expected, 'W'), ...shared },
        ...more,
      }
    : { say: 'low' as const, with: { ...readingInWords(reading), expected: expectedOf(reading), ...shared }, ...more }
}
