import type { Rule } from '../../findings/rule.ts'
import { inWords } from '../../findings/words.ts'
import type { Figures } from '../figures.ts'
import type { ResolvedSystem } from '../resolved.ts'
import { bendBeyondLimit } from '../rules/bend-beyond-limit.ts'
import { budgetExceeded } from '../rules/budget-exceeded.ts'
import { rigidOnCurve } from '../rules/rigid-on-curve.ts'
import { warrantyVoid } from '../rules/warranty-void.ts'
import { weightLimitExceeded } from '../rules/weight-limit-exceeded.ts'
import type { Bundle } from '../../wording/bundle.ts'

/** Why panels cannot lie on their surface: bent too far, or rigid on a curve; null where they can. */
export const unsuitedTo = (alone: ResolvedSystem, bundle?: Bundle): string | null =>
  saidBy(bendBeyondLimit, alone, noFigures, bundle) ?? saidBy(rigidOnCurve, alone, noFigures, bundle)

/** What the customer's limits of weight and money say of the whole system; null where it keeps them. */
export function overLimit(system: ResolvedSystem, bundle?: Bundle): string | null {
  const { weight, budget } = system.system.limits
  return (
    (weight && saidBy(weightLimitExceeded, system, noFigures, bundle)) ??
    (budget && saidBy(budgetExceeded, system, noFigures, bundle)) ??
    null
  )
}

export const voidHere = (alone: ResolvedSystem, bundle?: Bundle): string | null =>
  saidBy(warrantyVoid, alone, noFigures, bundle)

function saidBy(
  rule: Rule<ResolvedSystem, Figures>,
  system: ResolvedSystem,
  figures: Figures,
  bundle: Bundle | undefined,
): string | null {
  const [first] = [rule.check(system, figures) ?? []].flat()
  return first ? inWords(first, rule, bundle) : null
}

/** What these rules do not ask for is left out, as a library has many panels. */
const noFigures: Figures = {
  arrays: [],
  battery: { usable_wh: null, autonomy_days: null, charge_rate_c: null },
  months: [],
  year: { unserved_wh: null, unserved_p90_wh: null },
  measurements: [],
  not_checked: [],
}
