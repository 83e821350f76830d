import type { PlannedArea, SurfacePlan } from '../../review/picture/plan.ts'
import { colours } from '../svg/colours.ts'
import { acrossX, acrossY, label } from '../svg/dimension.ts'
import { element, escaped, type Markup } from '../svg/element.ts'
import { framed } from '../svg/frame.ts'
import { fieldGroup, type Drawing } from '../svg/link.ts'
import type { Written } from '../units.ts'
import { sayIn } from '../../wording/phrase.ts'

const left = 30
const top = 6
/** Room for the dimensions of the surface, and as much again for those of what is kept out. */
const row = 22

/** A dimensioned plan of a surface, to scale, with its panels; what is kept out is hatched. */
export function planPicture(
  drawing: Drawing,
  plan: SurfacePlan,
  { metres, short }: Written,
  { width, height }: { readonly width: number; readonly height: number },
): string {
  const say = sayIn(drawing.bundle)
  const [alongX, alongY] = chains(plan)
  const right = alongY.length > 0 ? 36 : 8
  const below = row * (alongX.length > 0 ? 2 : 1)
  const scale = Math.min((width - left - right) / plan.length_m, (height - top - below) / plan.width_m)
  const [long, wide] = [plan.length_m * scale, plan.width_m * scale]
  const x = (m: number) => left + m * scale
  const y = (m: number) => top + m * scale
  const hatch = `hatch${plan.pointer.replaceAll('/', '-')}`
  const box = ({ x_m, y_m, length_m: l, width_m: w }: PlannedArea, fill: string) =>
    element('rect', { x: x(x_m), y: y(y_m), width: l * scale, height: w * scale, fill, stroke: 'currentColor' })

  const panels = plan.panels.map((one, i) =>
    fieldGroup(
      drawing,
      one.pointer,
      say`${one.name}, number ${i + 1} on ${plan.id}`,
      box(one, colours.panel),
      ...fitting(
        x(one.x_m + one.length_m / 2),
        y(one.y_m + one.width_m / 2),
        one.name,
        one.length_m * scale,
        one.width_m * scale,
      ),
    ),
  )
  const kept = plan.keep_out.map((one) =>
    fieldGroup(
      drawing,
      one.pointer,
      say`${one.name}: ${short(one.length_m)} by ${short(one.width_m)}, ${short(one.x_m)} along and ${short(one.y_m)} across from the corner`,
      box(one, `url(#${hatch})`),
      name(x(one.x_m + one.length_m / 2), y(one.y_m + one.width_m / 2) + 4, one.name),
    ),
  )
  return framed(
    drawing,
    { width: left + long + right, height: top + wide + below, label: sentence(plan, metres, say) },
    element('defs', {}, hatching(hatch)),
    fieldGroup(
      drawing,
      plan.pointer,
      say`surface ${plan.id}`,
      element('rect', {
        x: x(0),
        y: y(0),
        width: long,
        height: wide,
        fill: colours.ground,
        stroke: 'currentColor',
        'stroke-width': 1.5,
      }),
    ),
    ...panels,
    ...kept,
    ...alongX.map(([from, to]) =>
      acrossX({ from: x(from), to: x(to), at: top + wide + 6, text: numberOf(from, to, short, scale) }),
    ),
    ...alongY.map(([from, to]) =>
      acrossY({ from: y(from), to: y(to), at: left + long + 20, text: numberOf(from, to, short, scale) }),
    ),
    acrossX({ from: x(0), to: x(plan.length_m), at: top + wide + below - 16, text: metres(plan.length_m) }),
    acrossY({ from: y(0), to: y(plan.width_m), at: left - 10, text: metres(plan.width_m) }),
  )
}

type Step = readonly [number, number]

/** The steps from edge to edge of what is kept out, along the surface and across it [m]. */
function chains({
  keep_out: kept,
  length_m: long,
  width_m: wide,
}: SurfacePlan): readonly [readonly Step[], readonly Step[]] {
  return [
    steps(
      kept.flatMap(({ x_m: from, length_m: l }) => [from, from + l]),
      long,
    ),
    steps(
      kept.flatMap(({ y_m: from, width_m: w }) => [from, from + w]),
      wide,
    ),
  ]
}

function steps(edges: readonly number[], end: number): readonly Step[] {
  const inside = [...new Set(edges)].filter((edge) => 0 < edge && edge < end).sort((a, b) => a - b)
  const all = [0, ...inside, end]
  return inside.length === 0 ? [] : all.slice(1).map((to, i) => [all[i]!, to] as const)
}

/** A length as a number alone where it has room: its unit is the one of the whole. */
function numberOf(from: number, to: number, short: Written['short'], scale: number): string {
  const text = short(to - from).replace(/ \w+$/, '')
  return text.length * letter < (to - from) * scale ? text : ''
}

function sentence(
  { id, length_m: long, width_m: wide, panels, keep_out: kept, unplaced }: SurfacePlan,
  metres: Written['metres'],
  say: ReturnType<typeof sayIn>,
): string {
  const plan = say`Plan of ${id}, ${metres(long)} by ${metres(wide)}, with ${panels.length} panels`
  const free = kept.length > 0 ? say`${plan}, kept free: ${kept.map(({ name }) => name).join(', ')}` : plan
  return unplaced > 0 ? say`${free}; ${unplaced} more do not fit` : free
}

/** Lines at 45 degrees, the usual filling of what is not there. */
const hatching = (id: string): Markup =>
  element(
    'pattern',
    { id, width: 7, height: 7, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' },
    element('rect', { width: 7, height: 7, fill: colours.ground }),
    element('path', { d: 'M0,0V7', stroke: 'currentColor', 'stroke-width': 1.2 }),
  )

/** A name on a patch of ground, so that it can be read above the hatching. */
const name = (x: number, y: number, text: string): Markup =>
  element(
    'text',
    {
      x,
      y,
      'text-anchor': 'middle',
      stroke: colours.ground,
      'stroke-width': 5,
      'paint-order': 'stroke',
      'stroke-linejoin': 'round',
    },
    escaped(text),
  )

/** About how wide a letter is [px]. */
const letter = 6.6

/** A name in a box, along its longer side; nothing where it has no room. */
function fitting(x: number, y: number, text: string, width: number, height: number): readonly Markup[] {
  const room = text.length * letter
  if (room <= width && 14 <= height) return [label(x, y + 4, text, 'middle')]
  if (room <= height && 14 <= width)
    return [
      element(
        'text',
        { transform: `translate(${Math.round(x + 4)},${Math.round(y)}) rotate(-90)`, 'text-anchor': 'middle' },
        escaped(text),
      ),
    ]
  return []
}
