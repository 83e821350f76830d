import type { SheetResult } from '../../server/src/editor/protocol.ts'
import type { FromView } from './beside-messages.ts'
import { button, keepFocus, made, replaceAround } from './view-made.ts'
import { pageFigure, type OpenSheet, type PageFigure, type ReadSheet } from './view-page.ts'
import { witnesses } from './view-witnesses.ts'
import { said } from './view-said.ts'

/** The sheet of a record in the view: one page with its marks, and the table of all values. */
export interface SheetView {
  show(sheet: SheetResult): void
  /** What the PDF holds that was asked for. */
  heard(bytes: Uint8Array | null): void
  /** Turns to the page of a field. */
  turnTo(field: string | null): void
}

/** @param marked  called when something new can be marked */
export function createSheetView(
  content: HTMLElement,
  post: (message: FromView) => void,
  marked: () => void,
): SheetView {
  let shown: ReadSheet | null = null
  let page = 1
  let open: OpenSheet | null = null
  let opened = ''
  let asked = ''
  let figure: PageFigure | null = null
  let turn = 0

  return {
    show(sheet) {
      if (!sheet || 'problem' in sheet) {
        shown = null
        content.replaceChildren(
          made('h1', sheet?.source ?? said('noSheetTitle')),
          made('p', sheet?.problem ?? said('noSheet')),
          tools(),
        )
        return
      }
      const isOther = shown?.sha256 !== sheet.sha256
      shown = sheet
      if (isOther) page = sheet.rows.find((row) => row.page !== null)?.page ?? 1
      if (sheet.sha256 !== opened && sheet.sha256 !== asked) {
        asked = sheet.sha256
        post({ type: 'pdf' })
      }
      draw()
    },
    heard(bytes) {
      const sha256 = asked
      asked = ''
      if (!bytes) return problem(said('pdfUnread'))
      program()
        .then(({ openSheet }) => openSheet(new Uint8Array(bytes)))
        .then((sheet) => {
          open?.close().catch(() => null) // it is gone either way
          open = sheet
          figure = null
          opened = sha256
          draw()
        })
        .catch((error: unknown) => problem(said('pdfUndrawn', error)))
    },
    turnTo(field) {
      const row = shown?.rows.find((one) => one.field === field && one.page !== null)
      if (!row || row.page === page) return
      page = row.page!
      draw()
    },
  }

  function draw() {
    if (!shown) return
    const own = ++turn
    if (!open || opened !== shown.sha256) return put(null)
    if (figure?.page === page) return put(figure)
    pageFigure(open, page)
      .then((drawn) => {
        if (own !== turn) return
        figure = drawn
        put(drawn)
      })
      .catch((error: unknown) => problem(said('pageUndrawn', error)))
  }

  function put(drawn: PageFigure | null) {
    if (!shown) return
    drawn?.mark(shown.rows)
    const parts = [made('h1', shown.source), tools(), ...(drawn ? [drawn.element] : []), witnesses(shown)]
    keepFocus(content, () => {
      if (drawn && content.contains(drawn.element)) replaceAround(content, drawn.element, parts)
      else content.replaceChildren(...parts)
    })
    marked()
  }

  function problem(text: string) {
    content.querySelector('.problem')?.remove()
    const shown = made('p', text)
    shown.className = 'problem'
    content.prepend(shown)
  }

  function tools(): HTMLElement {
    const row = document.createElement('div')
    row.className = 'tools'
    const last = open?.pages ?? shown?.pages ?? 1
    const to = (next: number) => {
      page = next
      draw()
    }
    const [before, after] = [
      button(said('previousPage'), () => to(page - 1)),
      button(said('nextPage'), () => to(page + 1)),
    ]
    before.disabled = page <= 1
    after.disabled = last <= page
    row.append(button(said('showPictures'), () => post({ type: 'side', side: 'pictures' })))
    if (shown && last > 1) row.append(before, after)
    return row
  }
}

let loading: Promise<{ openSheet(bytes: Uint8Array): Promise<OpenSheet> }> | undefined

/** The program that draws pages, large as it is, is loaded with the first sheet. */
function program() {
  return (loading ??= new Promise((resolve, reject) => {
    const script = document.createElement('script')
    script.src = document.getElementById('content')!.dataset.reader!
    script.onload = () => resolve((globalThis as unknown as { wattproofSheet: never }).wattproofSheet)
    script.onerror = () => reject(new Error(said('notLoaded')))
    document.head.append(script)
  }))
}
