import { causeInWords, conditionsInWords, expectedOf, readingInWords, shareOf } from '../measured/in-words.ts'
import type { Doubt } from '../measured/doubts.ts'
import { measuredOf } from '../measured/measured.ts'
import type { MeasuredFindings } from '../measured/measured-findings.ts'
import type { Quantity } from '../measured/string.ts'
import { reviewRule } from '../rule.ts'

export const measurementAboveExpected = reviewRule({
  id: 'measurement-above-expected',
  severity: 'warning',
  reason:
    'No panel gives more than its sun: a value above the expected one is another string, or the conditions are mistaken.',
  source:
    'translation to the conditions of the day: IEC 60891:2021, procedure 2; 5 % or the uncertainty of the comparison, whichever is more: IEC 62446-1 (from memory)',
  messages: {
    found: '{name} {value} is {share} above the {expected} expected at {conditions}{what}',
    sun: '; check where and when the irradiance was taken',
    cells: '; check the temperature of the cells',
    string: '; it may be another string, or one panel more',
  },

  check(system) {
    // one that is low as well is spoken of there
    const high = measuredOf(system).strings.flatMap((one) => {
      const [first] = one.low.length > 0 ? [] : one.high
      return first ? [{ one, first }] : []
    })
    return high.flatMap((own) => {
      const alike = high.filter((other) => isSameSun(own, other))
      return alike[0] === own ? [doubtOf(own, alike.slice(1))] : []
    })
  },
})

/** Share of a voltage that no mistaken temperature makes up [1] (common practice, no source). */
const onePanelMore = 0.1

interface High {
  readonly one: MeasuredFindings
  readonly first: Doubt
}

/** More current on several strings at one time is one mistake, of the irradiance. */
const isSameSun = (a: High, b: High): boolean =>
  a === b ||
  (a.one.string.measurement === b.one.string.measurement &&
    [a, b].every(({ one, first }) => !one.diagnosis && isCurrent(first.reading.quantity)))

function doubtOf({ one, first: { reading, by } }: High, alike: readonly High[]) {
  const { sun, cell } = takenOf(one)
  const isSun = isCurrent(reading.quantity)
  return {
    say: 'found' as const,
    with: {
      ...readingInWords(reading),
      share: shareOf(by.share),
      expected: expectedOf(reading),
      conditions: conditionsInWords(one, reading),
      what: causeInWords(one) ?? { say: isSun ? 'sun' : by.share > onePanelMore ? 'string' : 'cells' },
    },
    suspects: [reading.field, ...alike.map(({ first }) => first.reading.field), ...(isSun ? sun : cell)] as const,
  }
}

const isCurrent = (quantity: Quantity) => quantity === 'isc' || quantity === 'imp'

function takenOf({ string: { measurement } }: MeasuredFindings) {
  const { irradiance, reference, cell_temperature: cell, air } = measurement.entry
  const list = <T>(...fields: readonly (T | undefined)[]) => fields.flatMap((field) => (field ? [field] : []))
  return { sun: list(irradiance ?? reference.isc), cell: list(cell ?? air) }
}
