import { formatNumber } from '../../quantities/format.ts'
import { joinWords } from '../../findings/join-words.ts'
import type { Panel } from '../../records/records.generated.ts'
import type { ResolvedSystem } from '../resolved.ts'

/** What the makers of the panels promise and what they exclude, a sentence for each kind of panel. */
export function warrantyNotes({ arrays }: ResolvedSystem): readonly string[] {
  const records = new Set(arrays.flatMap(({ panels }) => panels.flatMap(({ panel }) => panel?.record ?? [])))
  return [...records].map(note)
}

function note({ name, warranty }: Panel): string {
  const { output, workmanship, exclusions } = warranty
  const steps = output.flatMap(({ years, at_least: share }) =>
    years && share ? [`${formatNumber(100 * share.value, 3)} % of the power for ${years.text} years`] : [],
  )
  const made = workmanship.years ? [`${workmanship.years.text} years on workmanship`] : []
  const given = [...steps, ...made]
  const without = exclusions.length > 0 ? `; excluded: ${joinWords(exclusions.map(({ text }) => text))}` : ''
  return `${name?.text ?? 'The panel'}: ${given.length > 0 ? joinWords(given) : 'no warranty is recorded'}${without}.`
}
