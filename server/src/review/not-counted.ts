import { joined, phrase, type Phrase } from '../wording/phrase.ts'
import { costOf } from './cost.ts'
import type { ResolvedSystem } from './resolved.ts'

/** What the customer's limits of weight and money are checked without, in sentences. */
export function* notCounted(system: ResolvedSystem): Generator<Phrase> {
  const { weight, budget } = system.system.limits
  const light = weight ? withoutWeight(system) : []
  if (light.length > 0)
    yield light.length > 1
      ? phrase`Weight limit: the weights of ${joined(light)} are not known and not counted.`
      : phrase`Weight limit: the weight of ${light[0]} is not known and not counted.`
  if (!budget) return
  const { unit } = budget.quantity
  const names = [...new Set(costOf(system, unit).missing)]
  if (names.length > 0)
    yield names.length > 1
      ? phrase`Budget: ${joined(names)} give no price in ${unit} and are not counted.`
      : phrase`Budget: ${names[0]} gives no price in ${unit} and is not counted.`
}

function withoutWeight({ arrays }: ResolvedSystem): readonly string[] {
  const names = arrays.flatMap(({ entry, panels }) =>
    panels.length === 0
      ? [entry.id?.text ?? 'an array']
      : panels
          .filter(({ panel }) => !panel?.record.weight)
          .map(({ entry: own, panel }) => panel?.record.name?.text ?? own.panel.id?.text ?? 'a panel'),
  )
  return [...new Set(names)]
}
