import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { scratch, wattproof } from './run.ts'

const sample = 'samples/systems/measured/day-sailer.system.yaml'

test('the review lists every measured value with its verdict, and by year what is left of the power', () => {
  const { out, code } = wattproof(['review', sample])
  expect(code).toBe(0)
  const plain = out.replace(/ +/g, ' ')
  for (const said of [
    'string expected measured difference uncertain by verdict',
    '2026-06-20 coachroof 1 Voc 44.6 V 44.6 V',
    '2 Voc 44.6 V 33.4 V -25 % 2.6 % low: bypass diode conducting',
    '2026-06-20 coachroof 3.1 years 95 % ± 6.8 % 78 % Vmp x Imp',
    'coachroof: -1.4 % a year; at this pace not below the warranty while it runs.',
  ])
    expect(plain).toContain(said)
})

test('a steeper trend names the day on which it crosses the warranty', () => {
  const cwd = scratch({
    'own.system.yaml': `format: 1
name: Steep
kind: boat
arrays:
  - id: deck
    installed: 2023-06-01
    panels:
      - panel:
          stc: { pmax: 110 W, vmp: 18.6 V, imp: 5.92 A, voc: 22.1 V, isc: 6.31 A }
          cells: { in_series: 36 }
          temperature_coefficients: { pmax: -0.38 %/°C, voc: -0.29 %/°C, isc: 0.05 %/°C }
          warranty: { output: [{ years: 5, at_least: 80 % }] }
        count: 1
    wiring: { in_series: 1, in_parallel: 1 }
measurements:
  - { date: 2024-06-01, irradiance: 1000 W/m2, cell_temperature: 25 °C, strings: [{ string: 1, voc: 22.1 V, isc: 6.31 A, vmp: 18.1 V, imp: 5.77 A }] }
  - { date: 2025-06-01, irradiance: 1000 W/m2, cell_temperature: 25 °C, strings: [{ string: 1, voc: 22.1 V, isc: 6.31 A, vmp: 17.7 V, imp: 5.59 A }] }
`,
  })
  const { out } = wattproof(['review', 'own.system.yaml'], { cwd })
  expect(out).toContain('deck: -5 % a year; at this pace below the warranty from 2027-')
  const json = JSON.parse(wattproof(['review', 'own.system.yaml', '--format', 'json'], { cwd }).out)
  expect(json.power_left[0].below_warranty_from).toMatch(/^2027-/)
  expect(json.measurements[1]).toMatchObject({
    date: '2025-06-01',
    array: 'deck',
    string: 1,
    measured: { voc_v: 22.1, isc_a: 6.31, pmax_w: 17.7 * 5.59 },
    cause: 'aged',
  })
})

test('JSON holds exactly the promised keys', () => {
  const { measurements } = JSON.parse(wattproof(['review', sample, '--format', 'json']).out)
  for (const one of measurements) {
    expect(Object.keys(one)).toEqual(['date', 'array', 'string', 'expected', 'measured', 'cause', 'uncertainty_pct'])
    expect(Object.keys(one.expected)).toEqual(['voc_v', 'isc_a', 'pmax_w'])
    expect(Object.keys(one.measured)).toEqual(['voc_v', 'isc_a', 'pmax_w'])
  }
})

test('what is missing says which comparison it costs', () => {
  const text = readFileSync(sample, 'utf8')
    .replace(/^ {4}irradiance: 880.*\n/m, '')
    .replace(/^ {4}air: .*\n/m, '')
  const cwd = scratch({ 'own.system.yaml': text })
  const { out } = wattproof(['review', 'own.system.yaml'], { cwd })
  expect(out.replace(/\s+/g, ' ')).toContain(
    'Measured on 2026-06-20, coachroof: neither irradiance nor temperature was taken, so strings are compared with each other only.',
  )
})

test('the settings set the limit, of findings and of verdicts', () => {
  const system = readFileSync(sample, 'utf8')
  const panel = readFileSync('samples/systems/panels/puffin-115.panel.yaml', 'utf8')
  const library = (settings: string) =>
    scratch({ 'own.system.yaml': system, 'puffin-115.panel.yaml': panel, 'wattproof.yaml': settings })
  const rules = (settings: string) => {
    const cwd = library(settings)
    const { files } = JSON.parse(wattproof(['check', 'own.system.yaml', '--format', 'json'], { cwd }).out)
    return files[0].findings
      .map(({ rule }: { rule: string }) => rule)
      .filter((rule: string) => /^measurement/.test(rule))
  }
  expect(rules('format: 1\n')).toEqual(['measurement-below-expected'])
  expect(rules('format: 1\nmeasurements: { limit: 50 % }\n')).toEqual([])
  expect(rules('format: 1\nmeasurements: { limit: 1 %, current: 0.1 %, irradiance: 0.1 % }\n').length).toBeGreaterThan(
    2,
  )
  const half = wattproof(['review', 'own.system.yaml'], { cwd: library('format: 1\nmeasurements: { limit: 50 % }\n') })
  expect(half.out).toContain('A difference within 50 %')
  expect(half.out).not.toMatch(/\blow\b/)
})

test('the form has a row for each string, expected values in twelve conditions, boxes, and the cautions on top', () => {
  const cwd = scratch()
  const path = join(cwd, 'form.html')
  expect(wattproof(['report', sample, '--form', '-o', path]).code).toBe(0)
  const html = readFileSync(path, 'utf8')
  const headings = [...html.matchAll(/<h2>(.*?)<\/h2>/g)].map(([, text]) => text)
  expect(headings).toEqual([
    'Cautions',
    'On the day',
    'coachroof: Voc expected, in V',
    'coachroof: Isc expected, in A',
    'coachroof: measured',
  ])
  const text = wattproof(['report', sample, '--form', '--format', 'markdown']).out
  const voc = text.split('\n').filter((line) => /^\| [12] \| 2 x Puffin 115 \|/.test(line))
  expect(voc).toHaveLength(4)
  expect(voc.map((line) => line.split('|').length - 2)).toEqual([14, 14, 14, 14])
  for (const sun of [400, 600, 800, 1000])
    for (const cells of [15, 40, 65]) expect(text).toContain(`${sun} W/m2, ${cells} °C`)
  expect(text).toContain('never with the leads of a multimeter')
  expect(html).toContain('class="form boxes"')
})

test('the page has a leaf for what was measured, and none where nothing was', () => {
  const text = wattproof(['report', sample, '--format', 'markdown']).out
  expect(text).toContain('# Measured on the day: Day sailer, 7 m')
  expect(text).toContain('33.4 V low: bypass diode conducting')
  expect(wattproof(['report', 'samples/systems/boat.system.yaml', '--format', 'markdown']).out).not.toContain(
    'Measured on',
  )
})
