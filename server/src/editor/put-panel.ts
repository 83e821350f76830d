import { putPanel } from '../check/put-panel.ts'
import { surfaceComparison } from '../check/surface-comparison.ts'
import { arraysOn, comparableSurfaces, targetOn } from '../check/target-on.ts'
import { correctFirst, withErrors } from '../check/with-errors.ts'
import { formatIn } from '../quantities/format.ts'
import type { SurfaceRow } from '../review/choosing/row.ts'
import type { Bundle } from '../wording/bundle.ts'
import { figureInWords } from '../wording/figure.ts'
import { phraseInWords, sayIn } from '../wording/phrase.ts'
import type { Here } from './here.ts'
import type { Choice, PutPanelParams, PutPanelResult } from './protocol-changes.ts'
import { toTextEdit } from './to-protocol.ts'

/** Puts a panel on a surface of a system, or asks for what is still to be chosen. null for what is no system. */
export function panelPut({ checked, library, today, bundle }: Here, chosen: PutPanelParams): PutPanelResult {
  if (!checked.review) return null
  const { system } = checked.review
  const { surface, panel } = chosen
  if (surface === undefined) return { choose: 'surface', from: comparableSurfaces(system).map(plain) }
  const arrays = arraysOn(system, surface)
  if (chosen.array === undefined && arrays.length > 1) return { choose: 'array', from: arrays.map(plain) }
  const target = targetOn(system, surface, chosen.array)
  if ('problem' in target) return { problem: phraseInWords(target.problem, bundle) }
  const comparison = surfaceComparison(library, checked, target, undefined, bundle)
  const inError = (isMeant: (row: SurfaceRow) => boolean) => {
    const ids = new Set(comparison.rows.filter(isMeant).map((row) => row.panel))
    const meant = comparison.candidates.filter(({ id }) => ids.has(id))
    return withErrors(
      library,
      meant.map(({ id, panel: { path } }) => ({ id, path })),
      today,
    )
  }
  if (panel === undefined) {
    const wrong = inError(({ front }) => front)
    return { choose: 'panel', from: comparison.rows.map((row) => choiceOf(row, wrong.includes(row.panel), bundle)) }
  }
  const put = putPanel(comparison, panel, bundle)
  if ('problem' in put) return { problem: `${panel}: ${phraseInWords(put.problem, bundle)}` }
  const wrong = inError((row) => row.panel === panel)
  return {
    edits: put.edits.map((edit) => toTextEdit(checked.tree, edit)),
    done: [put.done, ...correctFirst(wrong, bundle)].join('. '),
  }
}

const plain = (id: string): Choice => ({ id, figures: '', note: '' })

/** A panel that cannot be taken has no figures: there would be no saying of how many panels. */
function choiceOf(row: SurfaceRow, isWrong: boolean, bundle: Bundle | undefined): Choice {
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
  const notes = [
    ...correctFirst(isWrong ? [panel] : [], bundle),
    ...(row.warranty_void === null ? [] : [row.warranty_void]),
  ]
  return { id: panel, figures: figures.filter((one) => one !== false).join(', '), note: notes.join(' ') }
}
