import { DOMParser } from '@xmldom/xmldom'
import { expect, test } from 'vitest'
import { drawComparison, drawPanel, drawSystem } from '../../server/src/report/index.ts'
import { panelPicture } from '../../server/src/values/picture/panel-picture.ts'
import { siteFor } from '../../server/src/check/site.ts'
import { reviewOf } from '../../server/src/check/review.ts'
import { systemPicture } from '../../server/src/review/picture/system-picture.ts'
import type { SurfaceRow } from '../../server/src/review/choosing/row.ts'
import { wattproof } from '../terminal/run.ts'
import { nodeAtPointer } from '../../server/src/text/tree-queries.ts'
import { samples } from './samples.ts'

const library = samples()
const panelOf = (path: string) => {
  const file = library.file(path)!
  return panelPicture(library.byId('panel', file.id, path)[0]!.record, file.id, siteFor(library, path))
}
const boat = (() => {
  const { system, figures } = reviewOf(library, library.file('samples/systems/boat.system.yaml')!)!
  return systemPicture(system, figures)
})()

interface Listed {
  readonly values: readonly { readonly id: string; readonly value: number | null }[]
}

test.each(['samples/library/panels/tern-110.panel.yaml', 'samples/systems/panels/puffin-115.panel.yaml'])(
  '%s: the picture shows the figures of `values`',
  (path) => {
    const { values } = JSON.parse(wattproof(['values', path, '--format', 'json']).out) as Listed
    const value = (id: string) => values.find((one) => one.id === id)!.value
    const { heat, curves } = panelOf(path)
    const own = heat!.mountings.filter(({ own }) => own)
    expect(own.map(({ pmax_w, cell_temperature_c }) => [pmax_w, cell_temperature_c])).toEqual([
      [value('pmax_hot'), value('cell_temperature_hot')],
    ])
    expect(curves.find(({ id }) => id === 'hot')!.cell_temperature_c).toBe(value('cell_temperature_hot'))
  },
)

test('the typed ratings lie on the curve of the standard test', () => {
  const { curves, typed } = panelOf('samples/library/panels/tern-110.panel.yaml')
  const { points, best } = curves.find(({ id }) => id === 'stc')!
  const at = (name: string) => typed.find((point) => point.curve === 'stc' && point.name === name)!
  expect(points[0]!.i).toBeCloseTo(at('Isc').ampere, 2)
  expect(points.at(-1)!.v).toBeCloseTo(at('Voc').volt, 2)
  expect(best.v).toBeCloseTo(at('Vmp').volt, 1)
  expect(best.i).toBeCloseTo(at('Vmp').ampere, 1)
})

test('a system shows the figures of `review`, to the last digit', () => {
  const {
    system: _,
    version: __,
    findings: ___,
    ...figures
  } = JSON.parse(wattproof(['review', 'samples/systems/boat.system.yaml', '--format', 'json']).out) as Record<
    string,
    unknown
  >
  expect(figures).toMatchObject(JSON.parse(JSON.stringify(boat.figures)) as object)
  expect(boat.windows.map(({ voc_cold_v, vmp_hot_v }) => [voc_cold_v, vmp_hot_v])).toEqual(
    boat.figures.arrays.map(({ voc_cold_v, vmp_hot_v }) => [voc_cold_v, vmp_hot_v]),
  )
  // the lowest of the days is the lowest of the months
  const lowest = Math.min(...boat.figures.months.map(({ lowest_soc: soc }) => soc!))
  expect(Math.min(...boat.charge!.days.map((day) => day.lowest))).toBe(lowest)
})

test('what is drawn is what the figures are: heights of the bars, sizes of the panels', () => {
  const drawing = drawSystem(boat, { links: true })
  const bars = partsOf(drawing.find(({ title }) => title === 'Energy by month')!.svg, '/arrays')
  const heights = bars.map((bar) => Number(bar.getElementsByTagName('rect')[0]!.getAttribute('height')))
  const { months } = boat.figures
  const scale = heights[5]! / months[5]!.yield_wh_day
  months.forEach(({ yield_wh_day: wh }, m) => expect(heights[m]! / scale).toBeCloseTo(wh, 3))
  expect(bars[5]!.getAttribute('aria-label')).toBe(
    `June: panels give ${Math.round(months[5]!.yield_wh_day)} Wh a day, loads take ${Math.round(months[5]!.load_wh_day)}`,
  )
  const panels = partsOf(drawing[0]!.svg, '/arrays/0/panels/0')
  expect(panels).toHaveLength(4)
  const [box] = [...panels[0]!.getElementsByTagName('rect')]
  expect(Number(box!.getAttribute('width')) / Number(box!.getAttribute('height'))).toBeCloseTo(1050 / 560, 2)
})

test('every part that leads to a field names it, and the field is there', () => {
  const path = 'samples/systems/boat.system.yaml'
  const drawn = drawSystem(boat, { links: true })
  const pointers = new Set(drawn.flatMap(({ svg }) => partsOf(svg).map((part) => part.getAttribute('data-field')!)))
  expect(pointers.size).toBeGreaterThan(15)
  for (const pointer of pointers) expect(nodeAtPointer(library.file(path)!.tree, pointer), pointer).not.toBeNull()
  for (const { svg, title } of drawn)
    for (const part of partsOf(svg))
      expect(part.getAttribute('aria-label'), `${title} ${part.getAttribute('data-field')}`).toBeTruthy()
})

test('on paper nothing leads anywhere, and every picture says in words what it shows', () => {
  for (const { svg } of [
    ...drawSystem(boat, { links: false, bundle: { texts: {}, units: 'us' } }),
    ...drawPanel(panelOf('samples/library/panels/tern-110.panel.yaml'), { links: false }),
  ]) {
    const root = read(svg)
    expect(root.getAttribute('role')).toBe('img')
    expect(root.getAttribute('aria-label')!.length).toBeGreaterThan(30)
    expect(svg).not.toMatch(/data-field|tabindex|<a |<style|style=/)
  }
})

test('a panel of which little is known has the pictures that can be drawn, and says what is missing', () => {
  const few = panelPicture(
    {
      ...library.byId('panel', 'tern-110', 'samples/library/panels')[0]!.record,
      temperature_coefficients: {},
      size: {},
    },
    'x',
    {
      hottest: 35,
      coldest: -10,
    },
  )
  expect(drawPanel(few, { links: false })).toEqual([])
  expect(few.missing).toHaveLength(3)
})

test('the front of a comparison is marked: filled points, a line through what gives most for its weight', () => {
  const row = (panel: string, kg: number, kwh: number, more: Partial<SurfaceRow> = {}): SurfaceRow => ({
    ...{ panel, count: 1, proven: true, layout: [], pmax_stc_w: 1, pmax_hot_w: 1, weight_kg: kg, price: null },
    ...{ wh_day: null, kwh_year: kwh, price_per_kwh: null, warranty_years: null, warranty_void: null, strings: null },
    ...{ front: false, excluded: null, not_known: [], ...more },
  })
  const rows = [
    row('light', 4, 200, { front: true }),
    row('strong', 9, 440, { front: true }),
    row('cheap', 10, 400, { front: true }), // by its price alone
    row('worse', 11, 390),
    row('bent', 2, 450, { excluded: 'bent too far' }),
  ]
  const { svg } = drawComparison('roof', rows, { links: true }).pictures[0]!
  const point = (panel: string) => partsOf(svg, `panel:${panel}`)[0]!.getElementsByTagName('path')[0]!
  const isFilled = (panel: string) => point(panel).getAttribute('fill') !== 'none'
  expect(rows.filter(({ panel }) => isFilled(panel)).map(({ panel }) => panel)).toEqual(['light', 'strong', 'cheap'])
  const placeOf = (panel: string) =>
    /translate\(([\d.]+),([\d.]+)\)/
      .exec(point(panel).getAttribute('transform')!)!
      .slice(1)
      .map((at) => Number(at).toFixed(3)) as [string, string]
  const [[x1, y1], [x2, y2]] = [placeOf('light'), placeOf('strong')]
  expect(svg).toContain(`d="M${x1},${y1}L${x2},${y1}L${x2},${y2}"`)
  expect(point('bent').getAttribute('d')).not.toBe(point('light').getAttribute('d'))
})

const read = (svg: string) =>
  new DOMParser({
    onError: (_, message) => {
      throw new Error(message)
    },
  }).parseFromString(svg, 'image/svg+xml').documentElement!

const partsOf = (svg: string, pointer?: string) =>
  [...read(svg).getElementsByTagName('g')].filter((part) =>
    pointer === undefined ? part.hasAttribute('data-field') : part.getAttribute('data-field') === pointer,
  )
