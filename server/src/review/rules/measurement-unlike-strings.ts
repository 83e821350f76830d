import { causeInWords, nameOf, othersInWords, readingInWords, shareOf } from '../measured/in-words.ts'
import { measuredOf } from '../measured/measured.ts'
import { reviewRule } from '../rule.ts'

export const measurementUnlikeStrings = reviewRule({
  id: 'measurement-unlike-strings',
  severity: 'warning',
  reason:
    'Strings of an array see the same sun through the same meter, so that one that gives less than the others shows where to look.',
  source: '5 % between strings: IEC 62446-1 (from memory); from 3 % on information: common practice, no source',
  messages: {
    low: '{name} {value} is {share} below {others} of {array}{cause}',
  },

  check(system) {
    const { strings } = measuredOf(system)
    return strings.flatMap((one) =>
      one.low
        .filter(({ against }) => against === 'strings')
        .map(({ reading, by, severity }) => {
          const { measurement, array } = one.string
          const others = strings.flatMap(({ string }) =>
            string.measurement === measurement && string !== one.string
              ? (string.readings.get(reading.quantity)?.field ?? [])
              : [],
          )
          return {
            say: 'low' as const,
            with: {
              ...readingInWords(reading),
              share: shareOf(by.share),
              others: othersInWords(others.length),
              array: nameOf(array),
              cause: causeInWords(one),
            },
            suspects: [reading.field, ...others] as const,
            severity,
          }
        }),
    )
  },
})
