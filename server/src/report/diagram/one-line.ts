import type { Wiring } from '../../review/picture/wiring.ts'
import { tenths } from '../numbers.ts'
import { element, type Markup } from '../svg/element.ts'
import { framed } from '../svg/frame.ts'
import type { Drawing } from '../svg/link.ts'
import type { Written } from '../units.ts'
import { arrayRow } from './array-row.ts'
import { bus, rowHeight, width } from './places.ts'
import { rightSide } from './right-side.ts'
import { controllerPart } from './controller-part.ts'
import { drop } from './symbols.ts'
import { joinWords } from '../../findings/join-words.ts'
import type { Bundle } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'

/** A one-line diagram: arrays on the left, the bus of the battery, and on its right what the bus feeds. */
export function oneLine(drawing: Drawing, wiring: Wiring, written: Written): string {
  const right = rightSide(drawing, wiring, written)
  const height = Math.max(rowHeight * wiring.arrays.length, right.height)
  const rows = wiring.arrays.map((_, i) => 30 + rowHeight * i)
  const parts: readonly Markup[] = [
    element('g', { 'stroke-width': 4 }, drop(bus, 8, height - 6)),
    ...wiring.arrays.map((array, i) => arrayRow(drawing, array, rows[i]!, written)),
    ...wiring.controllers.map((one) =>
      controllerPart(
        drawing,
        one,
        one.arrays.map((i) => rows[i]!),
        written,
      ),
    ),
    ...right.parts,
  ]
  return framed(drawing, { width, height, label: sentence(wiring, drawing.bundle) }, ...parts)
}

function sentence({ arrays, battery, inverter }: Wiring, bundle: Bundle | undefined): string {
  const say = sayIn(bundle)
  const each = arrays.map(({ id, panels, in_series: s, in_parallel: p, voc_cold_v: cold }) => {
    const names = joinWords(
      panels.map(({ count, name }) => `${count} x ${name}`),
      bundle,
    )
    const wired = say`${id}, ${names}, ${s ?? '?'} in series and ${p ?? '?'} in parallel`
    return cold === null ? wired : say`${wired}, at most ${tenths(cold)} V`
  })
  return inverter
    ? say`One-line diagram: ${each.join('; ')}; battery ${battery.name}; an inverter`
    : say`One-line diagram: ${each.join('; ')}; battery ${battery.name}`
}
