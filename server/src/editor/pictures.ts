import { siteFor } from '../check/site.ts'
import { surfaceComparison } from '../check/surface-comparison.ts'
import type { ReadFile } from '../records/read-file.ts'
import type * as pictures from '../report/index.ts'
import { formData } from '../review/page/form-data.ts'
import { pageData } from '../review/page/page-data.ts'
import { systemPicture } from '../review/picture/system-picture.ts'
import { panelPicture } from '../values/picture/panel-picture.ts'
import type { Here } from './here.ts'
import type { ComparisonResult, PageParams, PageResult, PicturesResult } from './protocol.ts'

/** The program that draws. */
export type Pictures = typeof pictures

/** Answers about pictures. What was drawn last of the file that is shown is kept, as most of it stays while somebody types. */
export function createPictures(load: () => Pictures) {
  let shown = ''
  let memory: Parameters<Pictures['drawPanel']>[2] = new Map()
  const drawing = { links: true }

  return {
    of({ path, checked, library }: Here): PicturesResult {
      if (path !== shown) memory = new Map()
      shown = path
      if (checked.kind === 'panel') {
        const { record, id } = checked as ReadFile<'panel'> & typeof checked
        const data = panelPicture(record, id, siteFor(library, path))
        return {
          title: data.name,
          pictures: load().drawPanel(data, drawing, memory),
          missing: data.missing,
          surfaces: [],
        }
      }
      if (!checked.review) return null
      const data = systemPicture(checked.review.system, checked.review.figures)
      return {
        title: data.name,
        pictures: load().drawSystem(data, drawing, 'metric', memory),
        missing: [],
        surfaces: data.plans.map(({ id }) => id),
      }
    },

    comparison({ checked, library }: Here, surface: string): ComparisonResult {
      const rows = checked.review && surfaceComparison(library, checked.path, checked.review.system, surface)
      return rows && load().drawComparison(surface, rows, drawing)
    },

    page({ checked, today }: Here, { units, revision, form }: PageParams): PageResult {
      if (!checked.review) return null
      const { system, figures } = checked.review
      const stamp = { date: today, revision }
      const html = form
        ? load().form(formData(system), stamp, units, 'html')
        : load().page(pageData(system, figures, checked), stamp, units, 'html')
      return { html }
    },
  }
}
