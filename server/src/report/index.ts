import type { SurfaceRow } from '../review/choosing/row.ts'
import type { FormData } from '../review/page/form-data.ts'
import type { PageData } from '../review/page/page-data.ts'
import type { SystemPicture } from '../review/picture/system-picture.ts'
import type { PanelPicture } from '../values/picture/panel-picture.ts'
import { comparisonTable } from './comparison-table.ts'
import { oneLine } from './diagram/one-line.ts'
import { drawAll, type Drawn, type Memory } from './drawn.ts'
import { formLeaves } from './page/form.ts'
import { htmlPage } from './page/html.ts'
import { leavesOf, type Stamp } from './page/leaves.ts'
import { markdownPage } from './page/markdown.ts'
import { chargePicture } from './pictures/charge.ts'
import { heatPicture } from './pictures/heat.ts'
import { monthsPicture } from './pictures/months.ts'
import { outlinePicture } from './pictures/outline.ts'
import { currentCurves, powerCurves } from './pictures/panel-curves.ts'
import { planPicture } from './pictures/plan.ts'
import { powerHistoryPicture } from './pictures/power-history.ts'
import { scatterPicture } from './pictures/scatter.ts'
import { windowsPicture } from './pictures/windows.ts'
import type { Drawing } from './svg/link.ts'
import { writtenIn, type Units } from './units.ts'
import type { Leaf } from './page/blocks.ts'
import type { Bundle } from '../wording/bundle.ts'
import { sayIn } from '../wording/phrase.ts'

/** The pictures of a panel record. */
export function drawPanel(panel: PanelPicture, drawing: Drawing, memory: Memory = new Map()): readonly Drawn[] {
  const say = sayIn(drawing.bundle)
  const { name, curves, typed, heat, outline } = panel
  return drawAll(
    [
      { title: say`Current against voltage`, data: [name, curves, typed], draw: () => currentCurves(drawing, panel) },
      { title: say`Power against voltage`, data: [name, curves, typed], draw: () => powerCurves(drawing, panel) },
      { title: say`Power when hot, by mounting`, data: heat, draw: () => (heat ? heatPicture(drawing, heat) : '') },
      {
        title: say`Outline to scale`,
        data: [name, outline],
        draw: () => (outline ? outlinePicture(drawing, name, outline) : ''),
      },
    ],
    memory,
  )
}

/** The pictures of a system. */
export function drawSystem(
  system: SystemPicture,
  drawing: Drawing,
  units: Units,
  memory: Memory = new Map(),
): readonly Drawn[] {
  const say = sayIn(drawing.bundle)
  const written = writtenIn[units]
  const { plans, figures, charge, windows, wiring, powerHistories } = system
  return drawAll(
    [
      ...plans.map((plan) => ({
        title: say`Plan of ${plan.id}`,
        data: plan,
        draw: () => planPicture(drawing, plan, written, { width: 336, height: 230 }),
      })),
      { title: say`Energy by month`, data: figures.months, draw: () => monthsPicture(drawing, figures.months) },
      {
        title: say`Battery through the year`,
        data: charge,
        draw: () => (charge ? chargePicture(drawing, charge) : ''),
      },
      { title: say`Voltage of the strings`, data: windows, draw: () => windowsPicture(drawing, windows) },
      ...powerHistories.map((history) => ({
        title: say`Power left of ${history.id}`,
        data: history,
        draw: () => powerHistoryPicture(drawing, history),
      })),
      { title: say`One-line diagram`, data: wiring, draw: () => oneLine(drawing, wiring, written) },
    ],
    memory,
  )
}

/** Every panel on one surface: a picture, and a table whose columns can be sorted by whoever shows it. */
export function drawComparison(
  surface: string,
  rows: readonly SurfaceRow[],
  drawing: Drawing,
): { readonly pictures: readonly Drawn[]; readonly table: string } {
  const title = sayIn(drawing.bundle)`Energy against weight on ${surface}`
  const plans = [{ title, data: rows, draw: () => scatterPicture(drawing, rows) }]
  return { pictures: drawAll(plans, new Map()), table: comparisonTable(surface, rows, drawing.bundle) }
}

/** The sheet to take along to the roof, to be filled in there. */
export function form(data: FormData, stamp: Stamp, units: Units, format: 'html' | 'markdown', bundle?: Bundle): string {
  return printed(formLeaves(data, writtenIn[units], stamp, bundle), format, bundle)
}

/** The page for a customer as one file. */
export function page(data: PageData, stamp: Stamp, units: Units, format: 'html' | 'markdown', bundle?: Bundle): string {
  return printed(leavesOf(data, writtenIn[units], stamp, bundle), format, bundle)
}

const printed = (leaves: readonly Leaf[], format: 'html' | 'markdown', bundle: Bundle | undefined): string =>
  format === 'html' ? htmlPage(leaves, sayIn(bundle)`en`) : markdownPage(leaves)
