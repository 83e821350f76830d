import type { Panel } from '../../records/records.generated.ts'
import { panelPower } from '../../values/panel-power.ts'
import { fullYears } from '../../values/warranted-energy.ts'
import { inCatalogue } from '../../wording/phrase.ts'
import type { ArrayFigures } from '../figures.ts'
import type { Target } from './laid-array.ts'

interface Known {
  readonly figures: ArrayFigures
  readonly months: readonly number[] | null
  readonly hasController: boolean
}

/** What a row's figures lack, or were worked out without. */
export function notKnown({ system, surface }: Target, panel: Panel, { figures, months, hasController }: Known) {
  const { stc, temperature_coefficients: coefficients, limits, construction } = panel
  const hasPower = panelPower(panel) !== null
  const isBent = (surface.curvature?.value ?? 0) > 0 && construction?.value !== 'rigid'
  const { budget } = system.system.limits
  const isForeign = budget !== undefined && figures.price !== null && figures.price.currency !== budget.quantity.unit
  const lacking: readonly (readonly [boolean, string])[] = [
    [!figures.price, inCatalogue`price`],
    [isForeign, inCatalogue`price in the currency of the budget`],
    [figures.weight_kg === null, inCatalogue`weight`],
    [fullYears(panel) <= 0, inCatalogue`output warranty`],
    [!stc.pmax, inCatalogue`Pmax`],
    [!hasPower && stc.pmax !== undefined, inCatalogue`Pmax coefficient`],
    // without Isc no current is checked, and without the coefficient the coldest voltage comes from a table
    [!stc.isc, inCatalogue`Isc`],
    [!coefficients.voc, inCatalogue`Voc coefficient`],
    [isBent && !limits.bend && !limits.bend_radius, inCatalogue`bend limit`],
    [!months && hasPower, inCatalogue`climate`],
    [!hasController, inCatalogue`controller`],
  ]
  return lacking.flatMap(([isLacking, name]) => (isLacking ? [name] : []))
}

/** What a panel lacks that cannot be laid at all. */
export const sidesNotKnown = ({ size: { length, width } }: Panel): readonly string[] => [
  ...(length ? [] : [inCatalogue`length`]),
  ...(width ? [] : [inCatalogue`width`]),
]
