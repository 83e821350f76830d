import type { Named, WiredArray } from '../../review/picture/wiring.ts'
import { tenths } from '../numbers.ts'
import { element, type Markup } from '../svg/element.ts'
import { fieldGroup, type Drawing } from '../svg/link.ts'
import type { Written } from '../units.ts'
import { cableRun } from './cable-label.ts'
import { lines } from './lines.ts'
import { arrayCable, controllerAt, disconnectAt, generatorAt, stringFuseAt } from './places.ts'
import { disconnector, fuse, generator, wire } from './symbols.ts'
import { sayIn } from '../../wording/phrase.ts'

/** Panels, string fuses, cable and disconnect of one array, up to its controller. */
export function arrayRow(drawing: Drawing, array: WiredArray, y: number, written: Written): Markup {
  const { in_series: series, in_parallel: parallel } = array
  const say = sayIn(drawing.bundle)
  const wired =
    series === null
      ? null
      : (parallel ?? 1) > 1
        ? say`${series} in series, ${parallel ?? 1} strings`
        : say`${series} in series`
  const cold = array.voc_cold_v === null ? say`cold not known` : say`cold ${tenths(array.voc_cold_v)} V`
  const hot = array.vmp_hot_v === null ? say`hot not known` : say`hot ${tenths(array.vmp_hot_v)} V`
  const panels = array.panels.map(({ count, name }) => `${count} x ${name}`).join(', ')
  return element(
    'g',
    {},
    wire(generatorAt, arrayCable.from, y),
    fieldGroup(drawing, array.pointer, say`array ${array.id}: ${panels}, ${wired ?? ''}`, generator(generatorAt, y)),
    ...lines(50, y - 7, [array.id], 15),
    ...lines(8, y + 32, [`${panels}${wired === null ? '' : `, ${wired}`}`], 48),
    ...lines(8, y + 46, [`${cold}, ${hot}`], 48),
    ...(array.string_fuse ? [stringFuse(drawing, array.string_fuse, (parallel ?? 1) > 1, y)] : []),
    cableRun(drawing, array.cable, arrayCable, y, written),
    wire(arrayCable.to, controllerAt - 20, y),
    ...(array.disconnect
      ? [
          fieldGroup(
            drawing,
            array.disconnect.pointer,
            say`disconnect ${array.disconnect.name}`,
            disconnector(disconnectAt, y),
            ...lines(disconnectAt, y - 16, [array.disconnect.name], 14, 'middle'),
          ),
        ]
      : []),
  )
}

function stringFuse(drawing: Drawing, { pointer, name }: Named, each: boolean, y: number): Markup {
  const say = sayIn(drawing.bundle)
  return fieldGroup(
    drawing,
    pointer,
    each ? say`string fuse ${name} each string` : say`string fuse ${name}`,
    fuse(stringFuseAt, y),
    ...lines(stringFuseAt, y - 10, [name], 10, 'middle'),
    ...(each ? lines(stringFuseAt, y + 17, [say`each string`], 12, 'middle') : []),
  )
}
