import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { applyEdits } from '../../server/src/text/span.ts'

const today = '2026-11-25'
const pairs = ['battery-fuse-low', 'battery-fuse-above-cable', 'battery-cable-thin', 'output-fuse-off'] as const

const text = (fuse: number, size: string, watts: number) => `format: 1
kind: cabin
site: { coldest: -10 °C, hottest: 35 °C }
arrays:
  - id: main
    panels: [{ panel: { cells: { technology: mono }, stc: { pmax: 110 W, vmp: 18.6 V, imp: 5.92 A, voc: 22.1 V, isc: 6.31 A }, temperature_coefficients: { pmax: -0.38 %/°C, voc: -0.29 %/°C, isc: 0.05 %/°C } }, count: 4 }]
    wiring: { in_series: 2, in_parallel: 2 }
    controller: { type: mppt, input: { max_voltage: 100 V, max_short_circuit_current: 20 A }, output: { max_current: 30 A, battery_voltages: [12 V] } }
    output: { fuse: ${fuse / 4} A, cable: { size: ${size}, length: 1 m, insulation: 90 °C } }
battery:
  battery: { chemistry: lifepo4, nominal_voltage: 12.8 V, capacity: { amount: 200 Ah }, charge: { max_current: 100 A }, discharge: { max_current: 300 A } }
  fuse: ${fuse} A
  cable: { size: ${size}, length: 1 m, insulation: 90 °C }
loads: [{ name: heater, power: ${watts} W, hours: 1 }]
`

const found = (source: string) => {
  const library = createLibrary()
  library.put('own.system.yaml', source)
  return checkFile(library, 'own.system.yaml', { today })!.findings.filter(({ rule }) =>
    (pairs as readonly string[]).includes(rule),
  )
}

const cases = [20, 40, 60, 100, 125, 200].flatMap((fuse) =>
  ['1.5 mm2', '4 mm2', '10 mm2', '16 mm2', '35 mm2', '8 AWG'].flatMap((size) =>
    [200, 600, 1250].map((watts) => ({ fuse, size, watts })),
  ),
)

// IEC 60364-4-43: design current at most the fuse, fuse at most the cable; a fix that breaks the other half is none.
test('the fix of a fuse or of a cable makes its own finding go and never an error of the other', () => {
  let fixes = 0
  for (const { fuse, size, watts } of cases) {
    const source = text(fuse, size, watts)
    const before = found(source)
    const errors = before
      .filter(({ severity }) => severity === 'error')
      .map(({ rule, pointer }) => `${rule} ${pointer}`)
    for (const { rule, pointer, corrections } of before)
      for (const { edits } of corrections) {
        fixes++
        const after = found(applyEdits(source, edits))
        const names = `${rule} at ${pointer} of ${fuse} A, ${size}, ${watts} W`
        expect(
          after.map((one) => `${one.rule} ${one.pointer}`),
          names,
        ).not.toContain(`${rule} ${pointer}`)
        for (const one of after)
          if (one.severity === 'error') expect(errors, names).toContain(`${one.rule} ${one.pointer}`)
      }
  }
  expect(fixes).toBeGreaterThan(50)
})

test('a fuse that carries the current and a cable that carries the fuse have no finding', () => {
  expect(found(text(160, '70 mm2', 1000))).toEqual([])
})
