import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'

const panel = (name: string, changes: Readonly<Record<string, string>> = {}) => {
  const {
    pmax = '110 W',
    noct = '46 °C',
    beta = '-0.29 %/°C',
    length = '1190 mm',
    weight = '2.2 kg',
    imp = '5.92 A',
    isc = '6.31 A',
  } = changes
  return `format: 1
name: ${name}
maker: Example Panel Works
family: Tern
construction: flexible
cells: { technology: mono, in_series: 36 }
stc: { pmax: ${pmax}, vmp: 18.6 V, imp: ${imp}, voc: 22.1 V, isc: ${isc} }
temperature_coefficients: { pmax: -0.38 %/°C, voc: ${beta}, isc: 0.05 %/°C }
noct: { temperature: ${noct} }
size: { length: ${length}, width: 540 mm }
weight: ${weight}
`
}
const small = panel('Tern 55', { pmax: '55 W', imp: '2.96 A', isc: '3.15 A', length: '620 mm', weight: '1.1 kg' })
const large = panel('Tern 220', { pmax: '220 W', imp: '11.83 A', isc: '12.6 A', length: '2320 mm', weight: '4.3 kg' })
const twin = panel('Tern 105', { pmax: '105 W', imp: '5.65 A', isc: '6.02 A' })

function found(text: string, others: readonly string[]) {
  const library = createLibrary()
  library.put('tern-110.panel.yaml', text)
  others.forEach((other, i) => library.put(`other-${i}.panel.yaml`, other))
  const { findings } = checkFile(library, 'tern-110.panel.yaml', { today: '2026-11-25' })!
  return findings.filter(({ severity }) => severity !== 'hint')
}

test('what is unusual about the fields of a warning is not reported besides', () => {
  expect(found(panel('Tern 110', { weight: '22 kg' }), [twin])).toMatchObject([{ rule: 'weight-per-area-unusual' }])
  expect(found(panel('Tern 110', { length: '119 mm' }), [])).toMatchObject([{ rule: 'efficiency-impossible' }])
})

test('of two findings of information on one field, the one with a fix is reported', () => {
  expect(found(panel('Tern 110', { noct: '64 °C' }), [small, large])).toMatchObject([{ rule: 'unlike-family' }])
})

test('a coefficient that its family has otherwise is reported once, with every sibling', () => {
  const [one, ...others] = found(panel('Tern 110', { beta: '-0.92 %/°C' }), [small, large])
  expect(others).toEqual([])
  expect(one!.severity).toBe('warning')
  expect(one!.corrections[0]).toMatchObject({ text: '-0.29 %/°C' })
  expect(one!.related.flatMap(({ path }) => path ?? [])).toEqual(['other-0.panel.yaml', 'other-1.panel.yaml'])
})

test('a rating that is a neighbour’s is reported as that', () => {
  const [one] = found(panel('Tern 110', { pmax: '105 W' }), [twin])
  expect(one!.message).toContain('Pmax 105 W is what Tern 105 has')
})
