import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import type { SurfaceRow } from '../../server/src/review/choosing/row.ts'
import { scratch, wattproof } from './run.ts'
import { controller, panel, priced, rowsOf, run, system, van } from './surface-library.ts'

test('a row has what the document promises, and its figures are those of the review of the system as written', () => {
  const cwd = van()
  const { rows, ...head } = JSON.parse(run(cwd, '--format', 'json').out)
  expect(head).toEqual({ version: 1, system: 'van', surface: 'roof' })
  const row = rows.find((one: SurfaceRow) => one.panel === 'large')
  expect(Object.keys(row).sort()).toEqual(
    'count excluded front kwh_year layout not_known panel pmax_hot_w pmax_stc_w price price_per_kwh proven strings warranty_void warranty_years weight_kg wh_day'.split(
      ' ',
    ),
  )
  const { in_series: series, in_parallel: parallel } = row.strings
  expect(series * parallel).toBe(row.count)
  expect(row.layout).toHaveLength(row.count)
  expect(row.strings.controller).toBe('c100')
  const written = run(cwd, '--write', 'large')
  expect(written.code).toBe(0)
  const text = readFileSync(join(cwd, 'van.system.yaml'), 'utf8')
  expect(text).toBe(
    system()
      .replace("'small', count: 2", `'large', count: ${row.count}`)
      .replace(
        'in_series: 2, in_parallel: 1 }\n    controller',
        `in_series: ${series}, in_parallel: ${parallel} }\n    controller`,
      ),
  )
  const review = JSON.parse(wattproof(['review', 'van.system.yaml', '--format', 'json'], { cwd }).out)
  expect(row.wh_day).toEqual(review.months.map((month: { yield_wh_day: number }) => month.yield_wh_day))
  expect(row.pmax_stc_w).toBe(review.arrays[0].pmax_stc_w)
  expect(row.pmax_hot_w).toBe(review.arrays[0].pmax_hot_w)
  expect(row.weight_kg).toBe(review.arrays[0].weight_kg)
  expect(row.price).toEqual(review.arrays[0].price)
  expect(review.findings.map(({ rule }: { rule: string }) => rule)).not.toContain('wiring-count-mismatch')
})

test('energy of a year and its price by hand', () => {
  const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
  for (const { wh_day: wh, kwh_year: year, price, price_per_kwh: each } of rowsOf(van())) {
    const kwh = wh!.reduce((sum, one, m) => sum + (one * days[m]!) / 1000, 0)
    expect(year).toBeCloseTo(kwh, 9)
    // five years at 80 %
    expect(each!.amount).toBeCloseTo(price!.amount / (kwh * 5 * 0.8), 9)
  }
})

test('the front, and what is not known', () => {
  const twin = (amount: number) => panel({ more: priced.replace('289', String(amount)) })
  const rows = rowsOf(van(system(), { 'dear.panel.yaml': twin(400), 'bare.panel.yaml': panel({ pmax: 140 }) }))
  const of = (id: string) => rows.find((row) => row.panel === id)!
  expect([of('large').front, of('dear').front]).toEqual([true, false])
  expect(of('bare')).toMatchObject({ price: null, weight_kg: null, price_per_kwh: null, warranty_years: null })
  expect(of('bare').not_known).toEqual(['price', 'weight', 'output warranty'])
  // the most energy, and nothing else to compete on; nobody knows whether it is lighter or cheaper than the others
  expect(of('bare').front).toBe(true)
})

test.each([
  { name: 'none fits', panel: panel({ length: 3000 }), why: /none fits/ },
  {
    name: 'bent too far',
    panel: panel({ more: 'limits: { bend: 5 deg }' }),
    surface: ', curvature: 30 deg',
    why: /bends by 30 deg.*more than the 5 deg/,
  },
  {
    name: 'rigid on a curve',
    panel: panel().replace('flexible', 'rigid'),
    surface: ', curvature: 30 deg',
    why: /is rigid and roof bends/,
  },
  {
    name: 'over weight',
    panel: panel({ more: 'weight: 9 kg' }),
    limits: '{ weight: 8 kg }',
    why: /more than the limit/,
  },
  {
    name: 'over budget',
    panel: panel({ more: 'price: { amount: 3200 USD }' }),
    limits: '{ budget: 3000 USD }',
    why: /more than the budget/,
  },
  {
    name: 'no string',
    panel: panel().replace('voc: 22.1 V', 'voc: 120 V').replace('vmp: 18.6 V', 'vmp: 100 V'),
    why: /no string of it/,
  },
])('excluded, last, and why: $name', ({ panel: record, surface = '', limits = '{}', why }) => {
  const cwd = van(system(surface, limits), { 'odd.panel.yaml': record })
  const rows = rowsOf(cwd)
  const last = rows.filter(({ excluded }) => excluded !== null)
  expect(last.map((row) => row.panel)).toContain('odd')
  const odd = last.find((row) => row.panel === 'odd')!
  expect(odd.excluded).toMatch(why)
  expect(odd.front).toBe(false)
  expect(rows.slice(-last.length)).toEqual(last)
  expect(run(cwd, '--write', 'odd').code).toBe(2)
  expect(readFileSync(join(cwd, 'van.system.yaml'), 'utf8')).toBe(system(surface, limits))
})

test('fewer than fit where the limits of the customer allow no more, and the figures are of these', () => {
  const heavy = panel({ more: 'weight: 9 kg\nprice: { amount: 100 USD }' })
  const cwd = van(system('', '{ weight: 30 kg }'), { 'heavy.panel.yaml': heavy })
  const row = rowsOf(cwd).find((one) => one.panel === 'heavy')!
  // 3 x 9 kg is the most below 30 kg; six fit
  expect(row).toMatchObject({ count: 6, excluded: null, weight_kg: 27, price: { amount: 300, currency: 'USD' } })
  expect(row.strings!.in_series * row.strings!.in_parallel).toBe(3)
  expect(row.layout).toHaveLength(6)
  const { out } = run(cwd)
  expect(out).toMatch(/^heavy +(yes|no) +3 of 6 /m)
  expect(out.replace(/\s+/g, ' ')).toContain(
    "3 of 6: 6 fit; the wiring and the customer's limits allow 3. All figures are of those 3.",
  )
})

test('where the own controller takes no string, one of the library that does', () => {
  const high = panel()
    .replace('voc: 22.1 V', 'voc: 120 V')
    .replace('vmp: 18.6 V', 'vmp: 100 V')
    .replace('imp: 5.91', 'imp: 1.10')
  const rows = rowsOf(van(system(), { 'high.panel.yaml': high, 'c250.controller.yaml': controller(250) }))
  expect(rows.find((row) => row.panel === 'high')).toMatchObject({ excluded: null, strings: { controller: 'c250' } })
})

test('the warranty is void where the sheet excludes the use', () => {
  const rows = rowsOf(van(system(), { 'void.panel.yaml': panel({ more: 'warranty: { exclusions: [mobile use] }' }) }))
  expect(rows.find((row) => row.panel === 'void')!.warranty_void).toMatch(/"mobile use", and this system moves/)
})

test('a walkway and keep-outs cost panels', () => {
  const most = (surface: string) => rowsOf(van(system(surface))).find((row) => row.panel === 'large')!.count
  expect(most('')).toBe(6)
  expect(most(', walkway: { side: length, width: 600 mm }')).toBe(4)
  expect(most(', keep_out: [{ x: 0 mm, y: 0 mm, length: 2.6 m, width: 600 mm }]')).toBe(4)
})

test('a panel from elsewhere is set beside the others', () => {
  const other = scratch({ 'new.panel.yaml': panel({ pmax: 120 }) })
  const ids = (...args: string[]) => rowsOf(van(), ...args).map((row) => row.panel)
  expect(ids().sort()).toEqual(['large', 'small'])
  expect(ids('--with', join(other, 'new.panel.yaml')).sort()).toEqual(['large', 'new', 'small'])
  expect(ids('--with', 'small').sort()).toEqual(['large', 'small'])
  expect(run(van(), '--with', 'small').out).toMatch(/^small \* /m)
  expect(run(van(), '--with', 'small').out).toContain('* small is set beside the panels of the library.')
  const as = (format: string) => run(van(), '--with', 'small', '--columns', 'count', '--format', format).out
  expect(as('csv')).toMatch(/^panel,count,beside\nsmall,12,yes\nlarge,6,no\n$/)
  expect(JSON.parse(as('json')).beside).toBe('small')
  expect(as('markdown')).toMatch(
    /\| small \\\* \| 12 \|\n\| large \| 6 \|\n\n\\\* small is set beside the panels of the library\.\n/,
  )
  expect(run(van(), '--with', 'nowhere').err).toMatch(/no such file, and no panel/)
})

test('several arrays on one surface: the person names one', () => {
  const two = system().replace(
    'battery: {',
    '  - { id: second, panels: [{ panel: small, count: 2, surface: roof }], wiring: { in_series: 2, in_parallel: 1 }, controller: c100 }\nbattery: {',
  )
  const { code, err } = run(van(two))
  expect(code).toBe(2)
  expect(err).toMatch(/several arrays lie on roof; name one with --array: .*main, second/)
  const cwd = van(two)
  expect(rowsOf(cwd, '--array', 'second')).toHaveLength(2)
  expect(run(cwd, '--array', 'second', '--write', 'large').code).toBe(0)
  expect(readFileSync(join(cwd, 'van.system.yaml'), 'utf8')).toContain(
    '- { id: second, panels: [{ panel: large, count: 6, surface: roof }]',
  )
})

test.each([
  [['van.system.yaml'], /name a surface of the system with --surface/],
  [['van.system.yaml', '--surface', 'deck'], /no surface `deck`; the system has the surfaces roof, bonnet/],
  [['van.system.yaml', '--surface', 'roof', '--array', 'x'], /no array `x`; the system has the arrays main/],
  [['large.panel.yaml', '--surface', 'roof'], /is no system description/],
  [['large.panel.yaml', '--write', 'large'], /need a system and --surface/],
  [['van.system.yaml', '--surface', 'bonnet', '--write', 'large'], /none fits/],
])('%j could not run and says why', (args, why) => {
  const { code, out, err } = wattproof(['compare', ...args], { cwd: van() })
  expect([code, out]).toEqual([2, ''])
  expect(err).toMatch(why)
})

test('text, CSV and Markdown', () => {
  const cwd = van(system(), { 'odd.panel.yaml': panel({ length: 3000 }) })
  const { out } = wattproof(['compare', 'van.system.yaml', '--surface', 'roof'], { cwd, env: { COLUMNS: '80' } })
  expect(out).toMatch(/^large +yes/m)
  expect(out).toMatch(/^odd +none fits/m)
  expect(out).toContain('local codes and licensed practice decide')
  expect(run(cwd, '--format', 'csv', '--columns', 'count,price').out).toMatch(
    /^panel,count,price\nsmall,12,3468\nlarge,6,1734\nodd,0,not known\n$/,
  )
  expect(run(cwd, '--format', 'markdown', '--columns', 'count').out).toMatch(
    /^\| panel \| panels \|\n\| --- \| --- \|\n/,
  )
  const sortedBy = rowsOf(cwd, '--sort', 'weight_kg').map((row) => row.panel)
  expect(sortedBy).toEqual(['large', 'small', 'odd'])
})

test('a power beyond all numbers is not known, and leads nothing', () => {
  const cwd = van(system(), { 'odd.panel.yaml': panel().replace('pmax: 110 W', 'pmax: 1e308 W') })
  const odd = rowsOf(cwd).find((row) => row.panel === 'odd')!
  expect(odd).toMatchObject({ pmax_stc_w: null, pmax_hot_w: null, kwh_year: null, front: false })
  expect(odd.not_known).toContain('Pmax')
  for (const format of ['text', 'csv', 'markdown']) expect(run(cwd, '--format', format).out).not.toMatch(/Infinity|NaN/)
})

test('limits say what of the rest of the system they are checked without', () => {
  const other = '  - id: other\n    panels: [{ panel: *p, count: 2, surface: bonnet }]\nbattery: {'
  const cwd = van(system('', '{ weight: 90 kg, budget: 5000 USD }').replace('battery: {', other))
  const lines: string[] = JSON.parse(run(cwd, '--format', 'json').out).not_checked
  expect(lines).toEqual([
    'Weight limit: the weight of *p is not known and not counted.',
    expect.stringMatching(/^Budget: \*p.* not counted\.$/),
  ])
  const text = run(cwd).out.replaceAll(/\s+/g, ' ')
  for (const line of lines) expect(text).toContain(line)
  expect(JSON.parse(run(van(), '--format', 'json').out)).not.toHaveProperty('not_checked')
})

test('a panel on the front with errors in its record is named, and when it is written', () => {
  const cwd = van(system(), { 'bright.panel.yaml': panel({ pmax: 300, more: priced }) })
  const said = 'bright has errors; correct them before you choose it.'
  const { rows, with_errors: wrong } = JSON.parse(run(cwd, '--format', 'json').out)
  expect(rows[0]).toMatchObject({ panel: 'bright', front: true })
  expect(wrong).toEqual(['bright'])
  expect(run(cwd).out.replaceAll(/\s+/g, ' ')).toContain(said)
  expect(run(cwd, '--format', 'markdown').out).toContain(said)
  expect(run(cwd, '--write', 'bright').out).toContain(said)
  const beside = wattproof(['compare', '.'], { cwd }).out.replaceAll(/\s+/g, ' ')
  expect(beside).toContain(said)
  expect(JSON.parse(wattproof(['compare', '.', '--format', 'json'], { cwd }).out).with_errors).toEqual(['bright'])
  expect(JSON.parse(run(van(), '--format', 'json').out)).not.toHaveProperty('with_errors')
})
