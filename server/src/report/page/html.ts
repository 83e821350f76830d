import { element, escaped, type Markup } from '../svg/element.ts'
import type { Block, Leaf, Section, Table } from './blocks.ts'
import { style } from './style.ts'

/** One file that needs nothing beside itself: no script, no address, and a policy that forbids both. */
export function htmlPage(leaves: readonly Leaf[], language: string): string {
  const [first] = leaves
  const head = element(
    'head',
    {},
    element('meta', { charset: 'utf-8' }),
    element('meta', {
      'http-equiv': 'Content-Security-Policy',
      content: "default-src 'none'; style-src 'unsafe-inline'",
    }),
    element('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    element('title', {}, escaped(first?.title ?? '')),
    element('style', {}, style as Markup),
  )
  const body = element('body', {}, element('main', {}, ...leaves.map(leafHtml)))
  return `<!doctype html>\n${element('html', { lang: language }, head, body)}\n`
}

const leafHtml = ({ title, subtitle, sections }: Leaf, i: number): Markup =>
  element(
    'section',
    { class: 'leaf' },
    element('h1', {}, escaped(title)),
    element('p', { class: 'under' }, escaped(subtitle)),
    ...sections.map((one, s) => sectionHtml(one, i === 0 && s === 0)),
  )

const sectionHtml = ({ title, blocks, half }: Section, leads: boolean): Markup =>
  element(
    'section',
    { class: half && 'half' },
    element('h2', {}, escaped(title)),
    ...blocks.map((block) => blockHtml(block, leads)),
  )

function blockHtml(block: Block, leads: boolean): Markup {
  switch (block.type) {
    case 'text':
      return element('p', { class: leads ? 'lead' : undefined }, escaped(block.text))
    case 'list': {
      const items = block.items.map((item) => element('li', {}, escaped(item)))
      return element('ul', { class: block.columns ? 'two' : undefined }, ...items)
    }
    case 'table':
      // on a narrow screen it scrolls, which a keyboard must be able to do too
      return element(
        'div',
        { class: block.columns ? 'two wide' : 'wide', role: 'region', 'aria-label': block.table.name, tabindex: 0 },
        tableHtml(block.table),
      )
    case 'pictures':
      return element(
        'div',
        { class: 'pictures' },
        ...block.pictures.map(({ title, svg }) =>
          element('figure', {}, ...(title === '' ? [] : [element('h3', {}, escaped(title))]), svg as Markup),
        ),
      )
  }
}

function tableHtml({ head, figures, rows, form }: Table): Markup {
  const of = (i: number) => (figures.includes(i) ? 'figure' : undefined)
  const cells = (row: readonly string[]) => row.map((cell, i) => element('td', { class: of(i) }, escaped(cell)))
  const isSum = (row: readonly string[]) => row[0] === ''
  return element(
    'table',
    { class: form && `form ${form}` },
    element(
      'thead',
      {},
      element('tr', {}, ...head.map((cell, i) => element('th', { scope: 'col', class: of(i) }, escaped(cell)))),
    ),
    element('tbody', {}, ...rows.map((row) => element('tr', { class: isSum(row) ? 'sum' : undefined }, ...cells(row)))),
  )
}
