import { readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { put, scratch, wattproof } from './run.ts'
import { controller, panel, priced, rowsOf, run, system, van } from './surface-library.ts'

const flat = (text: string) => text.replaceAll(/\s+/g, ' ')

describe('what is said below a table', () => {
  const heavy = panel({ more: 'weight: 9 kg\nprice: { amount: 100 USD }' })
  const limited = () => van(system('', '{ weight: 30 kg }'), { 'heavy.panel.yaml': heavy })
  const notes = [
    "3 of 6: 6 fit; the wiring and the customer's limits allow 3. All figures are of those 3.",
    'On the front: no other panel gives at least as much energy a year for no more weight and no more money.',
    'The figures are an aid; local codes and licensed practice decide.',
  ]

  test.each(['text', 'markdown'])('is in %s', (format) => {
    const { out, err } = run(limited(), '--format', format)
    expect(err).toBe('')
    for (const note of notes) expect(flat(out)).toContain(note)
  })

  test('goes to standard error with CSV, which says in columns of its own what the text says in cells', () => {
    const { out, err } = run(limited(), '--format', 'csv', '--columns', 'front,count,wired,price,currency')
    expect(out).toMatch(/^panel,front,count,wired,price,currency\n(?:\w+,(?:yes|no),\d+,\d+,\d+,USD\n){3}$/)
    expect(out).toMatch(/^heavy,(yes|no),6,3,300,USD$/m)
    for (const note of notes) expect(err).toMatch(new RegExp(`^wattproof: .*${note}$`, 'm'))
  })

  test('side by side', () => {
    const csv = wattproof(['compare', '.', '--format', 'csv', '--columns', 'expected_life,currency'], { cwd: van() })
    expect(csv.out).toBe('panel,expected_life,currency\nlarge,4,USD\nsmall,4,USD\n')
    expect(csv.err).toMatch(/^wattproof: Common practice, no source: .* \(4 are assumed here\)/)
    const text = (columns: string) => wattproof(['compare', '.', '--columns', columns], { cwd: van() }).out
    expect(text('price_per_kwh_expected')).toContain('Common practice')
    expect(text('efficiency')).not.toContain('Common practice')
  })

  test('the front is explained where it is shown', () => {
    expect(run(van(), '--columns', 'front').out).toContain('On the front:')
    expect(run(van(), '--columns', 'count').out).not.toContain('On the front:')
  })

  test('only panels that are shown are said to have errors', () => {
    const cwd = van(system(), { 'bright.panel.yaml': panel({ pmax: 300, more: priced }) })
    const without = run(cwd, '--filter', 'pmax_stc_w < 1000 W')
    expect(without.out).toMatch(/^small /m)
    expect(without.out).not.toContain('bright')
    const json = run(cwd, '--filter', 'pmax_stc_w < 1000 W', '--format', 'json').out
    expect(JSON.parse(json)).not.toHaveProperty('with_errors')
  })

  test('another controller than the one that the system has', () => {
    const said = 'The system has the controller c100 here; where another is named, that one takes more of the panels'
    const high = panel().replace('voc: 22.1 V', 'voc: 120 V').replace('vmp: 18.6 V', 'vmp: 100 V')
    const more = { 'high.panel.yaml': high.replace('imp: 5.91', 'imp: 1.10'), 'c250.controller.yaml': controller(250) }
    expect(flat(run(van(system(), more)).out)).toContain(said)
    expect(flat(run(van()).out)).not.toContain(said)
  })
})

test.each([
  { filter: 'count > 500', left: '0 of 2 panels match --filter.' },
  { filter: 'count > 6', left: '1 of 2 panels matches --filter.' },
])('how many panels a filter leaves: $filter', ({ filter, left }) => {
  expect(run(van(), '--filter', filter).out).toContain(`\n${left}\n`)
  expect(run(van(), '--filter', filter, '--format', 'markdown').out).toContain(`\n${left}\n`)
  expect(run(van(), '--filter', filter, '--format', 'csv').err).toContain(`wattproof: ${left}\n`)
  expect(run(van()).out).not.toContain('--filter')
})

test('a filter that leaves no panel leaves no empty tables', () => {
  const { out, code } = wattproof(['compare', '.', '--filter', 'efficiency > 90'], { cwd: van() })
  expect([out, code]).toEqual(['0 of 2 panels match --filter.\n', 0])
})

test('a filter finds the number that is shown, whatever binary fractions make of it', () => {
  const cwd = van(system(), { 'odd.panel.yaml': panel().replace('isc:', 'efficiency: 14.9 %, isc:') })
  const { out } = wattproof(
    ['compare', '.', '--filter', 'efficiency_printed = 14.9', '--format', 'csv', '--columns', 'efficiency_printed'],
    { cwd },
  )
  expect(out).toBe('panel,efficiency_printed\nodd,14.9\n')
})

test('a price in another currency than the budget is named: the budget is checked without it', () => {
  const cwd = van(system('', '{ budget: 50000 USD }'), { 'e.panel.yaml': panel({ more: 'price: { amount: 9 EUR }' }) })
  const of = (id: string) => rowsOf(cwd).find((row) => row.panel === id)!
  expect(of('e').not_known).toContain('price in the currency of the budget')
  expect(of('large').not_known).toEqual([])
})

describe('--write', () => {
  test('as JSON says what was written', () => {
    const cwd = van()
    const { out, err, code } = run(cwd, '--write', 'large.panel.yaml', '--format', 'json')
    expect([code, err]).toEqual([0, ''])
    const { rows, written } = JSON.parse(out)
    expect(rows).toHaveLength(2)
    expect(written).toEqual({
      file: 'van.system.yaml',
      panel: 'large',
      count: 6,
      strings: { in_series: 3, in_parallel: 2, controller: 'c100' },
      array: 'main',
      said: '6 x large on roof, 3 in series x 2',
    })
    expect(readFileSync(join(cwd, 'van.system.yaml'), 'utf8')).toContain("panel: 'large', count: 6")
  })

  test.each(['csv', 'markdown'])('writes nothing where %s should say so', (format) => {
    const cwd = van()
    const { out, err, code } = run(cwd, '--write', 'large', '--format', format)
    expect([code, out]).toEqual([2, ''])
    expect(err).toContain(`leave out --format ${format}`)
    expect(readFileSync(join(cwd, 'van.system.yaml'), 'utf8')).toBe(system())
  })

  test('a panel from elsewhere is not written, as the system would name a record that is not there', () => {
    const other = scratch({ 'new.panel.yaml': panel({ pmax: 120 }) })
    const file = join(other, 'new.panel.yaml')
    const cwd = van()
    for (const written of ['new', file]) {
      const { code, err } = run(cwd, '--with', file, '--write', written)
      expect([code, err]).toEqual([2, expect.stringContaining('copy it there first')])
    }
    expect(readFileSync(join(cwd, 'van.system.yaml'), 'utf8')).toBe(system())
    put(cwd, { 'offers/new.panel.yaml': panel({ pmax: 120 }) })
    expect(run(cwd, '--with', 'offers/new.panel.yaml', '--write', 'new').code).toBe(0)
  })
})

test('a panel from elsewhere that is called like one of the library goes by its path', () => {
  const file = join(scratch({ 'large.panel.yaml': panel({ pmax: 120, more: priced }) }), 'large.panel.yaml')
  const { out } = run(van(), '--with', file, '--format', 'csv', '--columns', 'pmax_stc_w')
  expect(out.split('\n').slice(1, 4).sort()).toEqual([`${file},720,yes`, 'large,660,no', 'small,660,no'].sort())
})

test('a library without panels could not be compared', () => {
  const cwd = van()
  for (const name of ['small', 'large']) rmSync(join(cwd, `${name}.panel.yaml`))
  const { code, out, err } = run(cwd)
  expect([code, out]).toEqual([2, ''])
  expect(err).toContain('the library of `van.system.yaml` has no panel records')
})
