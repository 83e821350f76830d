// Draws the datasheets of the sample library, from its records: invented products, five layouts.
//   node .scripts/sheets.mjs
import { createWriteStream, mkdirSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { once } from 'node:events'
import PDFDocument from 'pdfkit'
import { parse } from 'yaml'
import { words } from './sheets/words.mjs'

const panels = 'samples/library/panels'
const out = 'samples/library/sheets'
mkdirSync(out, { recursive: true })

const layouts = {
  'tern-110': mosaic,
  'tern-55': mosaic,
  avocet: units,
  'heron-100': sides,
  crane: german,
  oystercatcher: german,
  'bittern-200': sides,
  dunlin: units,
}

for (const [source, records] of bySource()) {
  const name = source.slice('sheets/'.length)
  const doc = new PDFDocument({
    autoFirstPage: false,
    margin: 0,
    size: 'A4',
    info: { Title: name, CreationDate: new Date('2026-09-01T00:00:00Z') },
  })
  const file = doc.pipe(createWriteStream(join(out, name)))
  const pages = Math.max(...records.map(({ datasheet }) => datasheet.page))
  for (let page = 1; page <= pages; page++) {
    doc.addPage()
    const record = records.find(({ datasheet }) => datasheet.page === page)
    if (record) (layouts[name.slice(0, -4)] ?? list)(doc, record)
    else cover(doc, records[0])
  }
  doc.end()
  await once(file, 'finish')
}

function bySource() {
  const groups = new Map()
  for (const name of readdirSync(panels).sort()) {
    const record = parse(readFileSync(join(panels, name), 'utf8'))
    const source = record.datasheet?.source
    if (source?.endsWith('.pdf')) groups.set(source, [...(groups.get(source) ?? []), record])
  }
  return groups
}

/** The printed rows of a record by section: [label, symbol, text]. */
function sections(
  { stc, noct = {}, temperature_coefficients: drift = {}, size, weight, cells, limits = {}, warranty = {} },
  w,
  decimal = (t) => t,
) {
  const row = (label, text, symbol = '') => (text === undefined ? [] : [[label, symbol, decimal(String(text))]])
  const rating = (from) => ['pmax', 'vmp', 'imp', 'voc', 'isc'].flatMap((key) => row(w[key][0], from[key], w[key][1]))
  const range = (text) => text?.replace('..', ' °C to +')
  return [
    [w.ratings, [...rating(stc), ...row(w.tolerance, stc.tolerance), ...row(w.efficiency, stc.efficiency)]],
    [w.nominal, rating(noct)],
    [
      w.thermal,
      [
        ...row(w.temperature, noct.temperature),
        ...['pmax', 'voc', 'isc', 'vmp', 'imp'].flatMap((key) => row(w.coefficient + w[key][1], drift[key])),
      ],
    ],
    [w.build, [...row(w.size, sizeOf(size)), ...row(w.weight, weight), ...row(w.cells, cells?.in_series)]],
    [
      w.limits,
      [
        ...row(w.system_voltage, limits.system_voltage),
        ...row(w.series_fuse, limits.series_fuse),
        ...row(w.operating_temperature, range(limits.operating_temperature)),
        ...row(w.bend, limits.bend?.replace(' deg', '°')),
        ...row(w.bend_radius, limits.bend_radius),
      ],
    ],
    [
      '',
      [
        ...(warranty.workmanship ? [[w.product.replace('YEARS', warranty.workmanship.years), '', '']] : []),
        ...(warranty.output ?? []).map((o) => [
          w.output.replace('YEARS', o.years).replace('SHARE', decimal(o.at_least)),
          '',
          '',
        ]),
      ],
    ],
  ].filter(([, rows]) => rows.length > 0)
}

function sizeOf({ length, width, thickness }) {
  return [length, width, thickness].filter(Boolean).join(' x ')
}

function head(doc, { name, maker }) {
  doc.rect(0, 0, 595, 60).fill('#17324d')
  doc.fillColor('#fff').font('Helvetica-Bold').fontSize(20).text(name, 40, 16)
  doc
    .font('Helvetica')
    .fontSize(9)
    .text(maker ?? 'Example Panel Works', 40, 40)
  doc
    .fillColor('#111')
    .fontSize(7)
    .text(
      'An invented product. Specifications are subject to change without notice; measuring tolerance ±3 %.',
      40,
      810,
    )
}

function cover(doc, record) {
  head(doc, record)
  doc
    .fillColor('#111')
    .font('Helvetica')
    .fontSize(11)
    .text('For boats, vans and cabins. See the data overleaf.', 40, 120)
}

function put(doc, text, x, y, { bold = false, size = 9, right } = {}) {
  doc
    .font(bold ? 'Helvetica-Bold' : 'Helvetica')
    .fontSize(size)
    .fillColor('#111')
  doc.text(text, right === undefined ? x : right - doc.widthOfString(text), y, { lineBreak: false })
}

/** Rows of a section from (x, y); `cells` gives the texts of a row with their places. */
function block(doc, [title, rows], x, y, cells, step = 15) {
  if (title) put(doc, title, x, y, { bold: true, size: 10 })
  rows.forEach((row, i) => {
    const at = y + 18 + i * step
    for (const [text, options] of cells(row)) if (text) put(doc, text, options.x ?? x, at, options)
    doc
      .moveTo(x, at + 11)
      .lineTo(x + 240, at + 11)
      .lineWidth(0.3)
      .stroke('#bbb')
  })
  return y + 18 + rows.length * step + 14
}

/** One list, values at the right edge. */
function list(doc, record) {
  head(doc, record)
  let y = 80
  for (const section of sections(record, words.en))
    y = block(doc, section, 40, y, ([label, symbol, text]) => [
      [symbol ? `${label} (${symbol})` : label, {}],
      [text, { right: 380 }],
    ])
}

/** Two lists side by side. */
function mosaic(doc, record) {
  head(doc, record)
  const all = sections(record, words.en)
  let [left, right] = [80, 83]
  for (const [i, section] of all.entries()) {
    const cells =
      (edge) =>
      ([label, symbol, text]) => [
        [`${label}${symbol ? ` ${symbol}` : ''}`, {}],
        [text, { right: edge }],
      ]
    if (i < 3) left = block(doc, section, 40, left, cells(285))
    else right = block(doc, section, 310, right, cells(555))
  }
}

/** The symbol and the unit in columns of their own. */
function units(doc, record) {
  head(doc, record)
  let y = 80
  for (const section of sections(record, words.en))
    y = block(doc, section, 40, y, ([label, symbol, text]) => {
      const [, number, unit] = /^([-±\d][\d./+-]*) (\D+)$/.exec(text) ?? [null, text, '']
      return [
        [label, {}],
        [symbol, { x: 270 }],
        [unit, { x: 320 }],
        [number, { right: 430 }],
      ]
    })
}

/** Standard and nominal conditions side by side. */
function sides(doc, record) {
  head(doc, record)
  const [stc, ...rest] = sections(record, words.en)
  const noct = rest.find(([title]) => title === words.en.nominal)?.[1] ?? []
  put(doc, 'STC', 300, 98, { bold: true })
  if (noct.length) put(doc, 'NOCT', 380, 98, { bold: true })
  let y = block(doc, ['Electrical data', stc[1]], 40, 98, ([label, symbol, text]) => [
    [label, {}],
    [text, { x: 300 }],
    [(symbol && noct.find(([, s]) => s === symbol)?.[2]) || '', { x: 380 }],
  ])
  for (const section of rest.filter(([title]) => title !== words.en.nominal))
    y = block(doc, section, 40, y, ([label, symbol, text]) => [
      [label + symbol, {}],
      [text, { x: 300 }],
    ])
}

/** In German, with decimal commas. */
function german(doc, record) {
  head(doc, record)
  let y = 80
  for (const section of sections(record, words.de, (text) =>
    text.replace(/(\d)\.(\d)/g, '$1,$2').replace(' to ', ' bis '),
  ))
    y = block(doc, section, 40, y, ([label, symbol, text]) => [
      [symbol ? `${label} ${symbol}` : label, {}],
      [text, { x: 300 }],
    ])
}
