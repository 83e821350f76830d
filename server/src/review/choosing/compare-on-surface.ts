import { monthDays } from '../../physics/sun.ts'
import { fullYears } from '../../values/warranted-energy.ts'
import { arrayFigures } from '../array-figures.ts'
import { shapeOf } from '../fit.ts'
import { packPanels, type Packing } from '../packing/pack-panels.ts'
import type { SurfaceShape } from '../packing/surface.ts'
import { yieldOf } from '../year.ts'
import { unsuitedTo, voidHere } from './excluded.ts'
import { bestFirst, withFront } from './front.ts'
import type { Target } from './laid-array.ts'
import { notKnown, sidesNotKnown } from './not-known.ts'
import { unknownRow, type Candidate, type ControllerChoice, type SurfaceRow } from './row.ts'
import { withinLimits } from './within-limits.ts'
import type { Bundle } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'

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
  const shape = shapeOf(target.surface)
  const rows = candidates
    .map((candidate) => laidOn(shape, candidate))
    .sort(byPower)
    .map((laid) => rowOf(target, laid, own, library, bundle))
  return bestFirst(withFront(rows))
}

/** A panel and where as many as fit come to lie; null where it or the surface has no size. */
interface Laid {
  readonly candidate: Candidate
  readonly packing: Packing | null
}

function laidOn(shape: SurfaceShape | null, candidate: Candidate): Laid {
  const { length, width } = candidate.panel.record.size
  const hasSize = shape && length && width && length.value > 0 && width.value > 0
  return { candidate, packing: hasSize ? packPanels(shape, { length: length.value, width: width.value }) : null }
}

/** From the least power to the most: once one is enough for the loads, those after it are seen to be. */
function byPower(a: Laid, b: Laid): number {
  const of = ({ candidate, packing }: Laid) =>
    (packing?.laid.length ?? 0) * (candidate.panel.record.stc.pmax?.value ?? 0)
  return of(a) - of(b)
}

function rowOf(
  target: Target,
  { candidate, packing }: Laid,
  own: ControllerChoice | undefined,
  library: readonly ControllerChoice[],
  bundle: Bundle | undefined,
): SurfaceRow {
  const say = sayIn(bundle)
  const { id, panel } = candidate
  const { warranty } = panel.record
  if (!packing)
    return { panel: id, ...unknownRow, excluded: say`its size is not known`, not_known: sidesNotKnown(panel.record) }
  const { laid: layout, proven } = packing
  const count = layout.length
  if (count === 0)
    return { panel: id, ...unknownRow, proven, excluded: say`none fits on the surface, either way round` }

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
      (hasController && !strings
        ? panel.record.stc.voc
          ? say`no string of it stays within the voltage and current limits of any controller`
          : say`its Voc is not known, so no string can be checked against a controller`
        : null) ??
      over,
    not_known: notKnown(target, panel.record, { figures, months, hasController }),
  }
}
