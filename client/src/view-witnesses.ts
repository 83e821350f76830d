import type { SheetRow } from '../../server/src/editor/protocol.ts'
import type { ReadSheet } from './view-page.ts'
import { made } from './view-made.ts'
import { said, type Words } from './view-said.ts'

/** Every field with what the sheet prints for it: for those who do not see the page, and for all who look for what differs. */
export function witnesses({ rows, source, model }: ReadSheet): HTMLElement {
  const table = document.createElement('table')
  const head = document.createElement('tr')
  for (const text of [said('field'), said('typed'), said('onTheSheet'), said('where'), '']) {
    const cell = made('th', text) as HTMLTableCellElement
    cell.scope = 'col'
    head.append(cell)
  }
  const caption = made('caption', model ? `${source}, ${model}` : source)
  const top = document.createElement('thead')
  top.append(head)
  const body = document.createElement('tbody')
  body.append(...rows.map(line))
  table.append(caption, top, body)
  const scroller = document.createElement('div')
  scroller.className = 'wide'
  scroller.tabIndex = 0
  scroller.append(table)
  return scroller
}

function line(row: SheetRow): HTMLElement {
  const { field, name, typed, printed, status, page, label } = row
  const one = document.createElement('tr')
  one.className = status.replace(' ', '-')
  one.dataset.field = field
  const head = document.createElement('th')
  head.scope = 'row'
  const lead = made('button', name) as HTMLButtonElement
  lead.type = 'button'
  head.append(lead)
  const where = page === null ? '' : `${said('page', page)}${label ? `: ${label}` : ''}`
  one.append(head, ...[typed ?? '', printed ?? '', where, said(words[status])].map((text) => made('td', text)))
  return one
}

const words: Readonly<Record<SheetRow['status'], keyof Words>> = {
  same: 'same',
  other: 'differs',
  'not found': 'notFound',
  'not typed': 'notInTheRecord',
}
