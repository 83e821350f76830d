import { checkFile } from '../check/check.ts'
import { siteFor } from '../check/site.ts'
import { surfaceComparison } from '../check/surface-comparison.ts'
import { firstTargetOn } from '../check/target-on.ts'
import type { ReadFile } from '../records/read-file.ts'
import type * as pictures from '../report/index.ts'
import { formData } from '../review/page/form-data.ts'
import { pageData } from '../review/page/page-data.ts'
import { systemPicture } from '../review/picture/system-picture.ts'
import { panelPicture } from '../values/picture/panel-picture.ts'
import type { Here } from './here.ts'
import type { ComparisonResult, PageParams, PageResult, PicturesResult } from './protocol.ts'
import { bundleOf, translated, unitsOf } from '../wording/bundle.ts'

/** The program that draws. */
export type Pictures = typeof pictures

/** Answers about pictures. What was drawn last of the file that is shown is kept, as most of it stays while somebody types. */
export function createPictures(load: () => Pictures) {
  let shown = ''
  let memory: Parameters<Pictures['drawPanel']>[2] = new Map()
  const drawing = ({ bundle }: Here) => ({ links: true, bundle })

  return {
    of(here: Here): PicturesResult {
      const { path, checked, library, bundle } = here
      if (path !== shown) memory = new Map()
      shown = path
      if (checked.kind === 'panel') {
        const { record, id } = checked as ReadFile<'panel'> & typeof checked
        const data = panelPicture(record, id, siteFor(library, path))
        return {
          title: data.name,
          pictures: load().drawPanel(data, drawing(here), memory),
          missing: data.missing.map((one) => translated(one, bundle)),
          surfaces: [],
        }
      }
      if (!checked.review) return null
      const data = systemPicture(checked.review.system, checked.review.figures, bundle)
      return {
        title: data.name,
        pictures: load().drawSystem(data, drawing(here), memory),
        missing: [],
        surfaces: data.plans.map(({ id }) => id),
      }
    },

    comparison(here: Here, surface: string): ComparisonResult {
      const { library, bundle, checked } = here
      const target = checked.review && firstTargetOn(checked.review.system, surface)
      if (!target) return null
      const { rows } = surfaceComparison(library, checked, target, undefined, bundle)
      return load().drawComparison(surface, rows, drawing(here))
    },

    page({ checked, path, library, today, bundle: own }: Here, { units, revision, form }: PageParams): PageResult {
      const bundle = bundleOf(own?.texts, units)
      // findings are in the units of the window
      const said = units === unitsOf(own) ? checked : checkFile(library, path, { today, bundle })
      if (!said?.review) return null
      const { system, figures } = said.review
      const stamp = { date: today, revision }
      const html = form
        ? load().form(formData(system, bundle), stamp, 'html', bundle)
        : load().page(pageData(system, figures, said, bundle), stamp, 'html', bundle)
      return { html }
    },
  }
}
