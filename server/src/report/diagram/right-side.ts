import type { Named, WiredBattery, Wiring } from '../../review/picture/wiring.ts'
import { whole } from '../numbers.ts'
import { element, type Markup } from '../svg/element.ts'
import { fieldGroup, type Drawing } from '../svg/link.ts'
import type { Written } from '../units.ts'
import { cableRun } from './cable-label.ts'
import { lines } from './lines.ts'
import { bus, busCable, busFuseAt, endAt } from './places.ts'
import { arrow, battery, converter, fuse, joint, wire } from './symbols.ts'
import { sayIn } from '../../wording/phrase.ts'

/** Battery, inverter, loads and other sources on the bus. */
export function rightSide(
  drawing: Drawing,
  wiring: Wiring,
  written: Written,
): { readonly parts: readonly Markup[]; readonly height: number } {
  const rows: ((y: number) => Markup)[] = [
    (y) => batteryPart(drawing, wiring.battery, y, written),
    ...(wiring.inverter ? [(y: number) => inverterPart(drawing, wiring, y)] : []),
    ...(wiring.direct.length > 0 ? [(y: number) => list(drawing, wiring.direct, y, 'right', '/loads')] : []),
    ...(wiring.sources.length > 0 ? [(y: number) => list(drawing, wiring.sources, y, 'left', '/other_sources')] : []),
  ]
  const heights = [70, ...(wiring.inverter ? [44] : []), 34, 22].slice(0, rows.length)
  let y = 30
  const parts = rows.map((draw, i) => {
    const made = draw(y)
    y += heights[i]!
    return made
  })
  return { parts, height: y }
}

function batteryPart(drawing: Drawing, own: WiredBattery, y: number, written: Written): Markup {
  const { in_series: series, in_parallel: parallel } = own
  const say = sayIn(drawing.bundle)
  const bank = series * parallel > 1 ? say`${series} in series, ${parallel} in parallel` : ''
  const volts = own.voltage_v === null ? '' : `, ${own.voltage_v.toFixed(1)} V`
  const each = own.each_fuse ? say`each fused ${own.each_fuse.name}` : null
  return element(
    'g',
    {},
    joint(bus, y),
    wire(bus, endAt - 14, y),
    fieldGroup(
      drawing,
      own.fuse?.pointer ?? own.pointer,
      own.fuse ? say`main fuse ${own.fuse.name}` : say`no fuse: the main fuse is not given`,
      ...(own.fuse ? [fuse(busFuseAt, y)] : []),
      ...lines(busFuseAt, y - 10, [own.fuse?.name ?? say`no fuse`], 9, 'middle'),
    ),
    cableRun(drawing, own.cable, busCable, y, written),
    fieldGroup(
      drawing,
      own.pointer,
      [say`battery`, each, `${series * parallel} x ${own.name}${volts}`, bank].join(' '),
      battery(endAt, y),
      ...lines(626, y - 6, [each], 10),
      ...lines(bus + 12, y + 32, [`${series * parallel} x ${own.name}${volts}`, bank], 36),
    ),
  )
}

function inverterPart(drawing: Drawing, { inverter, inverted }: Wiring, y: number): Markup {
  const say = sayIn(drawing.bundle)
  return element(
    'g',
    {},
    joint(bus, y),
    wire(bus, 482, y),
    fieldGroup(drawing, inverter!.pointer, say`inverter ${inverter!.text}`, converter(500, y, 'ac')),
    ...(inverted.length > 0 ? [wire(520, 540, y), arrow(536, y, 'right')] : []),
    ...lines(550, y - 4, [inverter!.text, names(inverted, say)], 20),
  )
}

const list = (
  drawing: Drawing,
  parts: readonly Named[],
  y: number,
  towards: 'right' | 'left',
  pointer: string,
): Markup => {
  const text = names(parts, sayIn(drawing.bundle))
  return fieldGroup(
    drawing,
    pointer,
    text,
    joint(bus, y),
    wire(bus, 500, y),
    arrow(towards === 'right' ? 496 : 482, y, towards),
    ...lines(510, y + (text.length > 30 ? -3 : 4), [text], 30),
  )
}

/** The first few, and how many more. */
function names(parts: readonly Named[], say: ReturnType<typeof sayIn>): string {
  const shown = parts.slice(0, 4).map(({ name }) => name)
  return parts.length > 4 ? say`${shown.join(', ')} and ${whole(parts.length - 4)} more` : shown.join(', ')
}
