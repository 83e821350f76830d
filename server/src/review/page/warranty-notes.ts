import { formatNumber } from '../../quantities/format.ts'
import { joinWords } from '../../findings/join-words.ts'
import type { Panel } from '../../records/records.generated.ts'
import type { ResolvedSystem } from '../resolved.ts'
import type { Bundle } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'

/** What the makers of the panels promise and what they exclude, a sentence for each kind of panel. */
export function warrantyNotes({ arrays }: ResolvedSystem, bundle?: Bundle): readonly string[] {
  const records = new Set(arrays.flatMap(({ panels }) => panels.flatMap(({ panel }) => panel?.record ?? [])))
  return [...records].map((record) => note(record, bundle))
}

function note({ name, warranty }: Panel, bundle: Bundle | undefined): string {
  const say = sayIn(bundle)
  const { output, workmanship, exclusions } = warranty
  const steps = output.flatMap(({ years, at_least: share }) =>
    years && share ? [say`${formatNumber(100 * share.value, 3)} % of the power for ${years.text} years`] : [],
  )
  const made = workmanship.years ? [say`${workmanship.years.text} years on workmanship`] : []
  const given = [...steps, ...made]
  const panel = name?.text ?? say`The panel`
  const promised = given.length > 0 ? joinWords(given, bundle) : say`no warranty is recorded`
  const without = joinWords(
    exclusions.map(({ text }) => text),
    bundle,
  )
  return without === '' ? `${panel}: ${promised}.` : say`${panel}: ${promised}; excluded: ${without}.`
}
