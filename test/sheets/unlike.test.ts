import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { sheetOf } from '../../server/src/reader/read-bytes.ts'
import { unreadable } from '../../server/src/sheets/sheet.ts'
import type { Beside } from '../../server/src/sheets/beside.ts'
import { sampleSheet } from './sample.ts'

const path = 'tern-110.panel.yaml'
/** The record as one types it: the fingerprint of the sheet comes later, by a fix. */
const record = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8').replace(/, sha256: \w+/, '')
const source = 'sheets/tern-110.pdf'

function found(text: string, beside: Beside) {
  const library = createLibrary()
  library.put(path, text)
  return checkFile(library, path, { today: '2026-11-25', sheetOf: () => beside })!.findings
}
const tern = async (): Promise<Beside> => ({
  state: 'read',
  source,
  path: source,
  sheet: await sampleSheet('tern-110.pdf'),
  sha256: 'ab',
})

describe('a value that the sheet prints otherwise', () => {
  test.each([
    ['isc: 0.05 %/°C', 'isc: 0.06 %/°C', '/temperature_coefficients/isc', '0.05 %/°C'],
    ['weight: 2.2 kg', 'weight: 2.6 kg', '/weight', '2.2 kg'],
    ['temperature: 46 °C', 'temperature: 45 °C', '/noct/temperature', '46 °C'],
    ['series_fuse: 15 A', 'series_fuse: 20 A', '/limits/series_fuse', '15 A'],
    ['tolerance: 0/+5 %', 'tolerance: 0/+3 %', '/stc/tolerance', '0/+5 %'],
    ['workmanship: { years: 2 }', 'workmanship: { years: 5 }', '/warranty/workmanship/years', '2'],
    [
      'operating_temperature: -40..85 °C',
      'operating_temperature: -40..75 °C',
      '/limits/operating_temperature',
      '-40..85 °C',
    ],
  ])('%s typed as %s', async (right, wrong, pointer, text) => {
    expect(record).toContain(right)
    const unlike = found(record.replace(right, wrong), await tern()).filter(({ rule }) => rule === 'unlike-sheet')
    expect(unlike).toHaveLength(1)
    expect(unlike[0]).toMatchObject({ pointer, severity: 'warning', corrections: [{ text }] })
    expect(unlike[0]!.message).toMatch(/: the sheet prints .* \(page 2, "/)
  })

  test('leads, and what its correction explains away is folded into it', async () => {
    const findings = found(record.replace('vmp: 18.6 V', 'vmp: 16.8 V'), await tern()).filter(
      ({ severity }) => severity !== 'hint',
    )
    expect(findings.map(({ rule, pointer }) => `${rule} ${pointer}`)).toEqual(['unlike-sheet /stc/vmp'])
    expect(findings[0]!.related.length).toBeGreaterThan(0)
  })

  test('has its correction, though one value alone of another model agrees with the rest no better', async () => {
    const text = record
      .replace('pmax: 110 W', 'pmax: 55 W')
      .replace('vmp: 18.6 V', 'vmp: 9.3 V')
      .replace('voc: 22.1 V', 'voc: 11.0 V')
    const unlike = found(text, await tern()).filter(({ rule }) => rule === 'unlike-sheet')
    expect(unlike.map(({ corrections }) => corrections[0]?.text)).toEqual(['110 W', '18.6 V', '22.1 V'])
  })

  test('is a matter of accepting like any other', async () => {
    const text = record.replace('weight: 2.2 kg', 'weight: 2.6 kg # accept unlike-sheet: weighed')
    expect(found(text, await tern()).map(({ rule }) => rule)).not.toContain('unlike-sheet')
  })
})

test.each(['voc: 22.10 V', 'voc: 22100 mV', 'voc: 22 V'])('%s is what the sheet prints as 22.1 V', async (voc) => {
  expect(found(record.replace('voc: 22.1 V', voc), await tern()).map(({ rule }) => rule)).not.toContain('unlike-sheet')
})

describe('a sheet that vouches for nothing is a hint', () => {
  test('where it is not there', () => {
    expect(found(record, { state: 'missing', source })).toMatchObject([
      { rule: 'sheet-not-found', severity: 'hint', pointer: '/datasheet/source' },
    ])
  })

  test.each([
    ['no PDF', new TextEncoder().encode('not a sheet at all')],
    ['nothing', new Uint8Array()],
    ['cut in half', new Uint8Array(readFileSync('samples/library/sheets/tern-110.pdf').subarray(0, 1500))],
  ])('%s', async (_, bytes) => {
    const sheet = await sheetOf(bytes)
    expect(sheet.problem).not.toBeNull()
    const findings = found(record, { state: 'read', source, path: source, sheet, sha256: 'ab' })
    expect(findings).toMatchObject([{ rule: 'sheet-unreadable', severity: 'hint', pointer: '/datasheet/source' }])
  })

  test('and no value is unlike it', () => {
    expect(
      found(record, { state: 'read', source, path: source, sheet: unreadable('it is a scan'), sha256: '' }).map(
        ({ rule }) => rule,
      ),
    ).toEqual(['sheet-unreadable'])
  })
})

test('a sheet that was replaced is noticed by its fingerprint', async () => {
  const text = record.replace('page: 2,', `page: 2, sha256: ${'ab'.repeat(32)},`)
  expect(found(text, { ...(await tern()), sha256: 'cd'.repeat(32) } as Beside)).toMatchObject([
    { rule: 'sheet-replaced', corrections: [{ pointer: '/datasheet/sha256', text: 'cd'.repeat(32) }] },
  ])
})

test('what a program read waits for a person', async () => {
  expect(found(record.replace('typed_by: ab', 'typed_by: sheet'), await tern())).toMatchObject([
    { rule: 'sheet-not-looked-at', severity: 'hint' },
  ])
})

test('a finding about what the sheet itself prints says so and offers nothing else', async () => {
  const sheet = await sampleSheet('tern-110.pdf')
  const odd = {
    ...sheet,
    models: sheet.models.map((m) => ({
      ...m,
      readings: m.readings.map((r) => (r.field === '/stc/voc' ? { ...r, typed: '18.1 V' } : r)),
    })),
  }
  const findings = found(record.replace('voc: 22.1 V', 'voc: 18.1 V'), {
    state: 'read',
    source,
    path: source,
    sheet: odd,
    sha256: 'ab',
  })
  const serious = findings.filter(({ severity }) => severity === 'error' || severity === 'warning')
  expect(serious.length).toBeGreaterThan(0)
  for (const one of serious)
    if (one.pointer === '/stc/voc')
      expect(one).toMatchObject({ message: expect.stringContaining('the sheet prints it so'), corrections: [] })
})

test('what the sheet prints is no slip of the hand: the search looks among the rest', async () => {
  const isArithmetic = ({ rule }: { readonly rule: string }) => rule === 'pmax-not-vmp-times-imp'
  // a name that says 110 would vouch for the power
  const text = record
    .replace('name: Tern 110', 'name: Tern')
    .replace('imp: 5.92 A', 'imp: 5.29 A')
    .replace(/^noct:.*\n(?: .*\n)+/m, '')
    .replace('  efficiency: 17.1 % # as printed\n', '')
    .replace('  vmp: -0.39 %/°C\n  imp: 0.01 %/°C\n', '')
  const alone = createLibrary()
  alone.put(path, text)
  const [swapped] = checkFile(alone, path, { today: '2026-11-25' })!.findings.filter(isArithmetic)
  expect([swapped!.pointer, swapped!.corrections[0]!.text]).toEqual(['/stc/imp', '5.92 A'])
  const sheet = await sampleSheet('tern-110.pdf')
  const models = sheet.models.map((m) => ({
    ...m,
    readings: m.readings
      .filter(({ field }) => field !== '/stc/pmax')
      .map((r) => (r.field === '/stc/imp' ? { ...r, typed: '5.29 A' } : r)),
  }))
  const beside = { state: 'read', source, path: source, sheet: { ...sheet, models }, sha256: 'ab' } as const
  const [computed] = found(text, beside).filter(isArithmetic)
  expect([computed!.pointer, computed!.corrections[0]!.text]).toEqual(['/stc/pmax', '98 W'])
})
