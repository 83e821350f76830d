import type { Outline } from '../../values/picture/panel-picture.ts'
import { colours } from '../svg/colours.ts'
import { acrossX, acrossY, label } from '../svg/dimension.ts'
import { element } from '../svg/element.ts'
import { framed } from '../svg/frame.ts'
import { fieldGroup, type Drawing } from '../svg/link.ts'
import { sayIn } from '../../wording/phrase.ts'

const [room, tall] = [280, 200]
const left = 30
const top = 6

/** The outline of a panel to scale, with what is typed of its size, and a bar of a tenth of a metre to hold beside it. */
export function outlinePicture(drawing: Drawing, name: string, outline: Outline): string {
  const { length_m: l, width_m: w, length, width, thickness, weight } = outline
  const scale = Math.min(room / l, tall / w)
  const [long, wide] = [l * scale, w * scale]
  const say = sayIn(drawing.bundle)
  const also = [...(thickness ? [say`${thickness.text} thick`] : []), ...(weight ? [weight.text] : [])].join(', ')
  return framed(
    drawing,
    {
      width: left + room + 8,
      height: top + wide + 62,
      label:
        also === ''
          ? say`Outline of ${name} to scale: ${length.text} by ${width.text}`
          : say`Outline of ${name} to scale: ${length.text} by ${width.text}, ${also}`,
    },
    element('rect', {
      x: left,
      y: top,
      width: long,
      height: wide,
      fill: colours.panel,
      stroke: 'currentColor',
      'stroke-width': 1.5,
    }),
    fieldGroup(
      drawing,
      length.pointer,
      say`length ${length.text}`,
      acrossX({ from: left, to: left + long, at: top + wide + 10, text: length.text }),
    ),
    fieldGroup(
      drawing,
      width.pointer,
      say`width ${width.text}`,
      acrossY({ from: top, to: top + wide, at: left - 10, text: width.text }),
    ),
    ...(also === '' ? [] : [label(left + long / 2, top + wide / 2 + 4, also, 'middle')]),
    element('path', {
      d: `M${left},${Math.round(top + wide + 46)}h${Math.round(scale / 10)}`,
      stroke: 'currentColor',
      'stroke-width': 4,
    }),
    label(left + scale / 10 + 8, top + wide + 50, '100 mm'),
  )
}
