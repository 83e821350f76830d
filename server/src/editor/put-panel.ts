import { putPanel } from '../check/put-panel.ts'
import { surfaceComparison } from '../check/surface-comparison.ts'
import { arraysOn, comparableSurfaces, targetOn } from '../check/target-on.ts'
import { formatIn } from '../quantities/format.ts'
import type { SurfaceRow } from '../review/choosing/row.ts'
import type { Bundle } from '../wording/bundle.ts'
import { figureInWords } from '../wording/figure.ts'
import { phraseInWords, sayIn } from '../wording/phrase.ts'
import type { Here } from './here.ts'
import type { Choice, PutPanelParams, PutPanelResult } from './protocol-changes.ts'
import { toTextEdit } from './to-protocol.ts'

/** Puts a panel on a surface of a system, or asks for what is still to be chosen. null for what is no system. */
export function panelPut({ checked, library, bundle }: Here, chosen: PutPanelParams): PutPanelResult {
  if (!checked.review) return null
  const { system } = checked.review
  const { surface, panel } = chosen
  if (surface === undefined) return { choose: 'surface', from: comparableSurfaces(system).map(plain) }
  const arrays = arraysOn(system, surface)
  if (chosen.array === undefined && arrays.length > 1) return { choose: 'array', from: arrays.map(plain) }
  const target = targetOn(system, surface, chosen.array)
  if ('problem' in target) return { problem: phraseInWords(target.problem, bundle) }
  const comparison = surfaceComparison(library, checked, target, undefined, bundle)
  if (panel === undefined) return { choose: 'panel', from: comparison.rows.map((row) => choiceOf(row, bundle)) }
  const put = putPanel(comparison, panel, bundle)
  return 'problem' in put
    ? { problem: `${panel}: ${phraseInWords(put.problem, bundle)}` }
    : { edits: put.edits.map((edit) => toTextEdit(checked.tree, edit)), done: put.done }
}

const plain = (id: string): Choice => ({ id, figures: '', note: '' })

/** A panel that cannot be taken has no figures: there would be no saying of how many panels. */
function choiceOf(row: SurfaceRow, bundle: Bundle | undefined): Choice {
  const {
    panel,
    strings,
    excluded,
    pmax_stc_w: rated,
    pmax_hot_w: hot,
    kwh_year: energy,
    weight_kg: weight,
    price,
  } = row
  if (excluded !== null) return { id: panel, figures: '', note: excluded }
  const say = sayIn(bundle)
  const count = strings && strings.in_series * strings.in_parallel
  const figures = [
    count !== null && (count === 1 ? say`1 panel` : say`${count} panels`),
    rated !== null && say`${{ value: rated, unit: 'W', decimals: 0 }} rated`,
    hot !== null && say`${{ value: hot, unit: 'W', decimals: 0 }} when hot`,
    energy !== null && say`${{ value: energy, unit: 'kWh', decimals: 0 }} a year`,
    weight !== null && figureInWords({ value: weight, unit: 'kg', decimals: 1 }, bundle),
    price !== null && formatIn(price.amount, price.currency),
  ]
  return { id: panel, figures: figures.filter((one) => one !== false).join(', '), note: row.warranty_void ?? '' }
}
