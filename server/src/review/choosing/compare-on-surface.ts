import { monthDays } from '../../physics/sun.ts'
import { panelPower } from '../../values/panel-power.ts'
import { fullYears } from '../../values/warranted-energy.ts'
import { arrayFigures } from '../array-figures.ts'
import { shapeOf } from '../fit.ts'
import { packPanels } from '../packing/pack-panels.ts'
import { yieldOf } from '../year.ts'
import { unsuitedTo, voidHere } from './excluded.ts'
import { bestFirst, withFront } from './front.ts'
import type { Target } from './laid-array.ts'
import { unknownRow, type Candidate, type ControllerChoice, type SurfaceRow } from './row.ts'
import { withinLimits } from './within-limits.ts'
import type { Bundle } from '../../wording/bundle.ts'
import { inCatalogue, sayIn } from '../../wording/phrase.ts'

/**
 * Every candidate on one surface, best first, the excluded last. Panels that lie there now are ignored.
 *
 * @param own      the controller of the array
 * @param library  others that could take its place
 * @param bundle   for why a panel cannot be taken
 */
export function compareOnSurface(
  target: Target,
  candidates: readonly Candidate[],
  own: ControllerChoice | undefined,
  library: readonly ControllerChoice[],
  bundle?: Bundle,
): readonly SurfaceRow[] {
  const rows = alikeTogether(candidates).map((candidate) => rowOf(target, candidate, own, library, bundle))
  return bestFirst(withFront(rows))
}

/** Panels of the same ratings one after another, as what was worked out for one is kept for the next. */
function alikeTogether(candidates: readonly Candidate[]): readonly Candidate[] {
  const groups = new Map<unknown, Candidate[]>()
  for (const candidate of candidates) {
    const power = panelPower(candidate.panel.record)?.table
    const group = groups.get(power)
    if (group) group.push(candidate)
    else groups.set(power, [candidate])
  }
  return [...groups.values()].flat()
}

function rowOf(
  target: Target,
  candidate: Candidate,
  own: ControllerChoice | undefined,
  library: readonly ControllerChoice[],
  bundle: Bundle | undefined,
): SurfaceRow {
  const say = sayIn(bundle)
  const { id, panel } = candidate
  const { size, warranty } = panel.record
  const shape = shapeOf(target.surface)
  const [length, width] = [size.length?.value ?? 0, size.width?.value ?? 0]
  if (!shape || length <= 0 || width <= 0) return { ...unknownRow, panel: id, excluded: say`its size is not known` }
  const { laid: layout, proven } = packPanels(shape, { length, width })
  const count = layout.length
  if (count === 0)
    return { ...unknownRow, panel: id, proven, excluded: say`none fits on the surface, either way round` }

  const { strings, array, over } = withinLimits(target, candidate, count, own, library, bundle)
  const alone = { ...target.system, arrays: [array] }
  const figures = arrayFigures(alone, array, 0)
  const months = yieldOf(alone)
  const energy = months && months.reduce((sum, wh, m) => sum + (wh * monthDays[m]!) / 1000, 0)
  const years = fullYears(panel.record)
  const { price } = figures
  const hasController = own !== undefined || library.length > 0
  return {
    panel: id,
    count,
    proven,
    layout,
    pmax_stc_w: figures.pmax_stc_w,
    pmax_hot_w: figures.pmax_hot_w,
    weight_kg: figures.weight_kg,
    price,
    wh_day: months,
    kwh_year: energy,
    price_per_kwh:
      price && energy && years > 0 ? { amount: price.amount / (energy * years), currency: price.currency } : null,
    warranty_years: Math.max(0, ...warranty.output.map((step) => step.years?.value ?? 0)) || null,
    warranty_void: voidHere(alone, bundle),
    strings,
    front: false,
    excluded:
      unsuitedTo(alone, bundle) ??
      (hasController && !strings ? say`no string of it keeps within the voltage and current of a controller` : null) ??
      over,
    not_known: [
      ...(price ? [] : [inCatalogue`price`]),
      ...(figures.weight_kg === null ? [inCatalogue`weight`] : []),
      ...(years > 0 ? [] : [inCatalogue`output warranty`]),
      ...(panelPower(panel.record) ? [] : [inCatalogue`Pmax coefficient`]),
      ...(months || !panelPower(panel.record) ? [] : [inCatalogue`climate`]),
      ...(hasController ? [] : [inCatalogue`controller`]),
    ],
  }
}
