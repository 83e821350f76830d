import type { WiredCable } from '../../review/picture/wiring.ts'
import type { Markup } from '../svg/element.ts'
import { fieldGroup, type Drawing } from '../svg/link.ts'
import type { Written } from '../units.ts'
import { lines } from './lines.ts'
import { wire } from './symbols.ts'
import { sayIn } from '../../wording/phrase.ts'

interface Run {
  readonly from: number
  readonly to: number
}

/** A wire with size, length and drop of its cable on it. */
export function cableRun(
  drawing: Drawing,
  cable: WiredCable,
  { from, to }: Run,
  y: number,
  { metres }: Written,
): Markup {
  const say = sayIn(drawing.bundle)
  const length = cable.length_m === null ? null : metres(cable.length_m)
  const drop = cable.drop_pct === null ? null : say`${cable.drop_pct.toFixed(1)} % lost`
  const middle = (from + to) / 2
  const words = [cable.size ?? say`size not given`, length, drop].flatMap((text) => text ?? []).join(', ')
  const room = Math.floor((to - from) / 6.4)
  const above = [cable.size, length].flatMap((text) => text ?? []).join(', ')
  return fieldGroup(
    drawing,
    cable.pointer,
    say`cable ${words}`,
    wire(from, to, y),
    ...(above.length > room
      ? [...lines(middle, y - 20, [cable.size], 12, 'middle'), ...lines(middle, y - 6, [length], 12, 'middle')]
      : lines(middle, y - 6, [above], room, 'middle')),
    ...lines(middle, y + 15, [drop], 14, 'middle'),
  )
}
