import type { WiredController } from '../../review/picture/wiring.ts'
import { element, type Markup } from '../svg/element.ts'
import { fieldGroup, type Drawing } from '../svg/link.ts'
import type { Written } from '../units.ts'
import { cableRun } from './cable-label.ts'
import { lines } from './lines.ts'
import { bus, controllerAt, outputCable, outputFuseAt } from './places.ts'
import { converter, drop, fuse, joint, wire } from './symbols.ts'
import { sayIn } from '../../wording/phrase.ts'

/** A controller on the row of its first array, joined to the others, up to the bus. */
export function controllerPart(
  drawing: Drawing,
  controller: WiredController,
  rows: readonly number[],
  written: Written,
): Markup {
  const [y, ...others] = rows as readonly [number, ...number[]]
  const say = sayIn(drawing.bundle)
  const { name, type, output_fuse: own, output_cable: cable } = controller
  const given = cable.size !== null || cable.length_m !== null
  return element(
    'g',
    {},
    ...others.map((other) => drop(controllerAt - 26, y, other)),
    ...(others.length > 0 ? [joint(controllerAt - 26, y)] : []),
    wire(controllerAt + 20, bus, y),
    ...(given ? [cableRun(drawing, cable, outputCable, y, written)] : []),
    joint(bus, y),
    fieldGroup(
      drawing,
      controller.pointer,
      say`controller ${name} ${type ?? ''}`.trim(),
      converter(controllerAt, y, 'dc'),
      ...lines(controllerAt, y + 34, [name, type], 19, 'middle'),
    ),
    ...(own
      ? [
          fieldGroup(
            drawing,
            own.pointer,
            say`output fuse ${own.name}`,
            fuse(outputFuseAt, y),
            ...lines(outputFuseAt, y - 10, [own.name], 9, 'middle'),
          ),
        ]
      : []),
  )
}
