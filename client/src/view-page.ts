import type { SheetResult, SheetRow } from '../../server/src/editor/protocol.ts'
import { made } from './view-made.ts'
import { said } from './view-said.ts'

/** A sheet that was read into rows. */
export type ReadSheet = Extract<SheetResult, { readonly rows: unknown }>

/** What the program that draws pages offers; the view loads it with the first sheet. */
export interface OpenSheet {
  readonly pages: number
  sizeOf(page: number): Promise<{ readonly width: number; readonly height: number }>
  draw(page: number, canvas: HTMLCanvasElement, width: number): Promise<void>
  close(): Promise<void>
}

/** One page of a sheet, with a mark over each printed value that stands for a field. */
export interface PageFigure {
  readonly page: number
  readonly element: HTMLElement
  /** Lays the marks anew; the page below them stays. */
  mark(rows: readonly SheetRow[]): void
}

export async function pageFigure(open: OpenSheet, page: number): Promise<PageFigure> {
  const element = document.createElement('figure')
  element.className = 'sheet'
  const { width, height } = await open.sizeOf(page)
  const paper = document.createElement('div')
  paper.className = 'paper'
  const canvas = document.createElement('canvas')
  canvas.setAttribute('role', 'img')
  canvas.setAttribute('aria-label', said('pageValues', page))
  paper.append(canvas)
  element.append(made('h2', said('pageOf', page, open.pages)), paper)
  await open.draw(page, canvas, Math.max(leastWidth, document.documentElement.clientWidth) * devicePixelRatio)
  return {
    page,
    element,
    mark(rows) {
      const own = rows.filter((row) => row.page === page)
      paper.replaceChildren(canvas, ...own.map((row) => markOf(row, width, height)))
    },
  }
}

/** Narrower a page cannot be read; the same in the style sheet [px]. */
const leastWidth = 640

/** A little larger than what is printed, so that the number stays free. */
const margin = 2

function markOf(row: SheetRow, width: number, height: number): HTMLElement {
  const mark = document.createElement('button')
  const [x, y, w, h] = row.box ?? [0, 0, 0, 0]
  const share = (points: number, whole: number) => `${((100 * points) / whole).toFixed(3)}%`
  mark.type = 'button'
  mark.className = `mark ${row.status.replace(' ', '-')}`
  mark.dataset.field = row.field
  mark.style.left = share(x - margin, width)
  mark.style.top = share(y - margin, height)
  mark.style.width = share(w + 2 * margin, width)
  mark.style.height = share(h + 2 * margin, height)
  mark.setAttribute('aria-label', inWords(row))
  mark.title = inWords(row)
  return mark
}

/** A row in words. */
function inWords({ name, typed, printed, status }: SheetRow): string {
  switch (status) {
    case 'same':
      return said('asPrinted', name, typed)
    case 'other':
      return said('printsOther', name, typed, printed)
    case 'not typed':
      return said('notTyped', name, printed)
    case 'not found':
      return said('notPrinted', name, typed)
  }
}
