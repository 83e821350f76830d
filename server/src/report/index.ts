import type { PageData } from '../review/page/page-data.ts'
import { htmlPage } from './page/html.ts'
import { leavesOf, type Stamp } from './page/leaves.ts'
import { markdownPage } from './page/markdown.ts'
import type { SurfaceRow } from '../review/choosing/row.ts'
import type { SystemPicture } from '../review/picture/system-picture.ts'
import type { PanelPicture } from '../values/picture/panel-picture.ts'
import { drawn, type Drawn } from './drawn.ts'
import { oneLine } from './diagram/one-line.ts'
import { chargePicture } from './pictures/charge.ts'
import { heatPicture } from './pictures/heat.ts'
import { monthsPicture } from './pictures/months.ts'
import { outlinePicture } from './pictures/outline.ts'
import { currentCurves, powerCurves } from './pictures/panel-curves.ts'
import { planPicture } from './pictures/plan.ts'
import { scatterPicture } from './pictures/scatter.ts'
import { windowsPicture } from './pictures/windows.ts'
import type { Drawing } from './svg/link.ts'
import { writtenIn, type Units } from './units.ts'

export function drawPanel(panel: PanelPicture, drawing: Drawing): readonly Drawn[] {
  return drawn(
    ['Current against voltage', currentCurves(drawing, panel)],
    ['Power against voltage', powerCurves(drawing, panel)],
    ['Power when hot, by mounting', panel.heat ? heatPicture(drawing, panel.heat) : ''],
    ['Outline to scale', panel.outline ? outlinePicture(drawing, panel.name, panel.outline) : ''],
  )
}

export function drawSystem(system: SystemPicture, drawing: Drawing, units: Units): readonly Drawn[] {
  const written = writtenIn[units]
  return drawn(
    ...system.plans.map((plan): [string, string] => [
      `Plan of ${plan.id}`,
      planPicture(drawing, plan, written, { width: 336, height: 230 }),
    ]),
    ['Energy by month', monthsPicture(drawing, system.figures.months)],
    ['Battery through the year', system.charge ? chargePicture(drawing, system.charge) : ''],
    ['Voltage of the strings', windowsPicture(drawing, system.windows)],
    ['One-line diagram', oneLine(drawing, system.wiring, written)],
  )
}

export function drawComparison(rows: readonly SurfaceRow[], drawing: Drawing): readonly Drawn[] {
  return drawn(['Energy against weight', scatterPicture(drawing, rows)])
}

/** The page for a customer as one file. */
export function page(data: PageData, stamp: Stamp, units: Units, format: 'html' | 'markdown'): string {
  const leaves = leavesOf(data, writtenIn[units], stamp)
  return format === 'html' ? htmlPage(leaves) : markdownPage(leaves)
}
