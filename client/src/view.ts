// Runs in the view beside the editor. It shows what the language server drew, and computes nothing.
import type { Picture } from '../../server/src/editor/protocol.ts'
import type { FromView, ToView } from './beside-messages.ts'
import { leadToFields, markField } from './view-fields.ts'
import { button, keepFocus, made } from './view-made.ts'
import { createSheetView } from './view-sheet.ts'
import { sortable } from './view-sort.ts'
import { said } from './view-said.ts'

declare function acquireVsCodeApi(): { postMessage(message: FromView): void }

const { postMessage } = acquireVsCodeApi()
const content = document.getElementById('content')!
let field: string | null = null

const mark = () => markField(content, field)
const sheet = createSheetView(content, postMessage, mark)

leadToFields(content, (pointer, isTyped) => postMessage({ type: isTyped ? 'reveal' : 'add', field: pointer }))
addEventListener('message', ({ data }: MessageEvent<ToView>) => {
  hear(data)
  mark()
})
postMessage({ type: 'ready' })

function hear(data: ToView): void {
  switch (data.type) {
    case 'show':
      return show(data)
    case 'sheet':
      return sheet.show(data.sheet)
    case 'pdf':
      return sheet.heard(data.bytes)
    case 'compared':
      return compared(data.comparison)
    case 'field':
      field = data.field
      sheet.turnTo(field)
  }
}

/** Pictures that are as they were stay where they are, and with them the focus. */
function show({ pictures: result, hasSheet }: Extract<ToView, { type: 'show' }>): void {
  if (!result) {
    content.replaceChildren(made('p', said('noPictures')))
    return
  }
  const { title, pictures, missing, surfaces } = result
  const before = new Map([...content.querySelectorAll('figure')].map((figure) => [figure.dataset.title, figure]))
  const figures = pictures.map((one) => {
    const old = before.get(one.title)
    return old && drawnFrom.get(old) === one.svg ? old : figureOf(one)
  })
  const comparison = content.querySelector('#comparison') ?? newElement('section', 'comparison')
  if (surfaces.length === 0) comparison.replaceChildren()
  const wanted = [
    made('h1', title),
    ...(surfaces.length > 0 || hasSheet ? [tools(surfaces)] : []),
    ...figures,
    ...missing.map((text) => made('p', text)),
    comparison,
  ]
  if (wanted.some((node, i) => content.childNodes[i] !== node))
    keepFocus(content, () => content.replaceChildren(...wanted))
}

const drawnFrom = new WeakMap<Element, string>()

function figureOf({ title, svg }: Picture): HTMLElement {
  const figure = document.createElement('figure')
  figure.dataset.title = title
  const drawing = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement
  figure.append(made('h2', title), document.importNode(drawing, true))
  drawnFrom.set(figure, svg)
  return figure
}

function tools(surfaces: readonly string[]): HTMLElement {
  const row = document.createElement('div')
  row.className = 'tools'
  const ask = (text: string, message: FromView) => button(text, () => postMessage(message))
  row.append(
    ...(surfaces.length > 0
      ? [
          ...surfaces.map((surface) => ask(said('compare', surface), { type: 'compare', surface })),
          ask(said('savePage'), { type: 'page' }),
        ]
      : [ask(said('showSheet'), { type: 'side', side: 'sheet' })]),
  )
  return row
}

function compared(comparison: Extract<ToView, { type: 'compared' }>['comparison']): void {
  const section = document.getElementById('comparison')
  if (!section) return
  if (!comparison) return section.replaceChildren(made('p', said('noSize')))
  const scroller = document.createElement('div')
  scroller.className = 'wide'
  scroller.tabIndex = 0
  const parsed = new DOMParser().parseFromString(comparison.table, 'text/html').querySelector('table')!
  const table = document.importNode(parsed, true)
  sortable(table)
  scroller.append(table)
  section.replaceChildren(...comparison.pictures.map(figureOf), scroller)
  section.scrollIntoView({ block: 'start' })
}

function newElement(tag: string, id: string): HTMLElement {
  const element = document.createElement(tag)
  element.id = id
  return element
}
