import { figure, type Said } from '../../findings/message.ts'
import type { Proposal } from '../../findings/rule.ts'
import { measuredOf } from '../measured/measured.ts'
import type { Slip } from '../measured/slip.ts'
import { reviewRule } from '../rule.ts'

export const measurementMistyped = reviewRule({
  id: 'measurement-mistyped',
  severity: 'warning',
  reason:
    'A list of readings is typed after a day on a roof; a moved decimal point or two values exchanged look like a fault of the panels.',
  source:
    'which typing mistake would make the value what the records or the other strings expect; within 20 %: common practice, no source',
  messages: {
    point: '{name} {value} is probably {meant} (decimal point moved){expected}',
    expected: ': about {expected} is expected',
    exchanged: '{name} {value} is below {other} {meant}: the two are probably exchanged',
    strings: 'String {value} reads like string {meant}, and that one like this: the two are probably exchanged',
    pointWhy: 'decimal point moved',
    exchangedWhy: 'exchanged with {other}',
    stringsWhy: 'strings exchanged',
  },

  check: (system) => measuredOf(system).slips.map((slip) => ({ ...doubtOf(slip), saysFix: true as const })),
})

function doubtOf({ kind, field, name, text, expected, also }: Slip) {
  const other = also?.name ?? ''
  switch (kind) {
    case 'decimal point moved': {
      const wanted = expected && { say: 'expected', with: { expected: figure(expected.value, expected.unit) } }
      return {
        say: 'point' as const,
        with: { name, value: field, meant: text, expected: wanted },
        suspects: [field] as const,
        correction: fix(field, text, { say: 'pointWhy' }),
      }
    }
    case 'exchanged':
      return {
        say: 'exchanged' as const,
        with: { name, value: field, other, meant: text },
        suspects: [field, also!.field] as const,
        correction: fix(field, text, { say: 'exchangedWhy', with: { other } }, also),
      }
    case 'strings exchanged':
      return {
        say: 'strings' as const,
        with: { value: field, meant: text },
        suspects: [field, also!.field] as const,
        correction: fix(field, text, { say: 'stringsWhy' }, also),
      }
  }
}

function fix(field: Proposal['field'], text: string, why: Said, also?: Slip['also']): Proposal {
  return { field, text, why, certainty: 'guess', ...(also && { also: [{ field: also.field, text: also.text }] }) }
}
