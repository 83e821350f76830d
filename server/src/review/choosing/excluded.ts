import type { Rule } from '../../findings/rule.ts'
import { inWords } from '../../findings/words.ts'
import { arrayFigures } from '../array-figures.ts'
import { batteryFigures } from '../battery-figures.ts'
import type { Figures } from '../figures.ts'
import type { ResolvedArray, ResolvedSystem } from '../resolved.ts'
import { bendBeyondLimit } from '../rules/bend-beyond-limit.ts'
import { budgetExceeded } from '../rules/budget-exceeded.ts'
import { rigidOnCurve } from '../rules/rigid-on-curve.ts'
import { warrantyVoid } from '../rules/warranty-void.ts'
import { weightLimitExceeded } from '../rules/weight-limit-exceeded.ts'

/** Why panels cannot lie on their surface: bent too far, or rigid on a curve; null where they can. */
export const unsuitedTo = (alone: ResolvedSystem): string | null =>
  saidBy(bendBeyondLimit, alone, figuresFor(alone)) ?? saidBy(rigidOnCurve, alone, figuresFor(alone))

/** What the customer's limits of weight and money say of the whole system; null where it keeps them. */
export function overLimit(system: ResolvedSystem): string | null {
  const figures = figuresFor(system)
  return saidBy(weightLimitExceeded, system, figures) ?? saidBy(budgetExceeded, system, figures)
}

export const voidHere = (alone: ResolvedSystem): string | null => saidBy(warrantyVoid, alone, figuresFor(alone))

function saidBy(rule: Rule<ResolvedSystem, Figures>, system: ResolvedSystem, figures: Figures): string | null {
  const [first] = [rule.check(system, figures) ?? []].flat()
  return first ? inWords(first, rule) : null
}

/** Without the year, which these rules do not ask for. */
const figuresFor = (system: ResolvedSystem): Figures => ({
  arrays: system.arrays.map((array: ResolvedArray, i) => arrayFigures(system, array, i)),
  battery: batteryFigures(system),
  months: [],
  year: { unserved_wh: null, unserved_p90_wh: null },
  not_checked: [],
})
