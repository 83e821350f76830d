import { checkFile } from '../../../server/src/check/check.ts'
import { createLibrary } from '../../../server/src/library/create.ts'
import { ideal, noise, normal, sheets, type Reading, type Scene, type Sheet } from './synthetic.ts'

/** An array as it is built, and what is wrong with its strings on each day. */
export interface Built {
  readonly id: string
  readonly sheet: Sheet
  readonly series: number
  readonly strings: number
}

export interface Day {
  readonly date: string
  readonly irradiance: number
  readonly temperature: number
  /** By array and number of string. */
  readonly faults?: Readonly<Record<string, Partial<Scene>>>
  /** Strings whose readings are each other's. */
  readonly swapped?: readonly [string, string]
  readonly reversed?: string
}

/** What a system with these arrays says of what a meter shows on these days. */
export function reviewOf(arrays: readonly Built[], days: readonly Day[], seed: number, points = true, typed?: string) {
  const next = normal(seed)
  const measurements = days.flatMap((day) => measure(arrays, day, next, points))
  const yaml = `
format: 1
name: Synthetic
kind: cabin
arrays:
${arrays.map(arrayYaml).join('\n')}
measurements:
${measurements.join('\n')}
`
  const library = createLibrary()
  library.put('wattproof.yaml', 'format: 1\n')
  library.put('own.system.yaml', typed ?? yaml)
  const { findings, review } = checkFile(library, 'own.system.yaml', { today: '2026-11-25', years: 1 })!
  const { measurements: figures } = review!.figures
  return { yaml, figures, findings: findings.filter(({ pointer }) => pointer.startsWith('/measurements')) }
}

function arrayYaml({ id, sheet, series, strings }: Built): string {
  const s = sheets[sheet]
  return `  - id: ${id}
    panels:
      - panel:
          stc: { pmax: ${s.pmax} W, vmp: ${s.vmp} V, imp: ${s.imp} A, voc: ${s.voc} V, isc: ${s.isc} A }
          cells: { technology: mono, in_series: ${s.cells}, bypass_diodes: ${s.diodes} }
          temperature_coefficients: { pmax: ${100 * s.gamma} %/°C, voc: ${100 * s.beta} %/°C, isc: ${100 * s.alpha} %/°C }
          size: { length: 1190 mm, width: 540 mm }
          warranty: { output: [{ years: 5, at_least: 90 % }, { years: 10, at_least: 80 % }] }
        count: ${series * strings}
    wiring: { in_series: ${series}, in_parallel: ${strings} }`
}

function measure(arrays: readonly Built[], day: Day, next: () => number, points: boolean): string[] {
  const scene = ({ sheet, series }: Built, name: string): Scene => ({
    sheet,
    count: series,
    irradiance: day.irradiance,
    temperature: day.temperature,
    ...day.faults?.[name],
    ...day.faults?.all,
  })
  const all = new Map<string, Reading>()
  for (const array of arrays)
    for (let n = 1; n <= array.strings; n++) all.set(`${array.id} ${n}`, ideal(scene(array, `${array.id} ${n}`)))
  if (day.swapped) {
    const [a, b] = day.swapped.map((name) => all.get(name)!)
    all.set(day.swapped[0], b!).set(day.swapped[1], a!)
  }
  const seen = (value: number, deviation: number) => value * (1 + deviation * next())
  const shownAt = seen(day.irradiance, noise.irradiance)
  const cell = day.temperature + noise.temperature * next()
  return arrays.map((array) => {
    const strings = Array.from({ length: array.strings }, (_, i) => {
      const name = `${array.id} ${i + 1}`
      const { voc, isc, vmp, imp } = all.get(name)!
      const sign = day.reversed === name ? -1 : 1
      const best = points
        ? `, vmp: ${seen(vmp, noise.voltage).toFixed(1)} V, imp: ${seen(imp, noise.current).toFixed(2)} A`
        : ''
      return `      - { string: ${i + 1}, voc: ${(sign * seen(voc, noise.voltage)).toFixed(1)} V, isc: ${seen(isc, noise.current).toFixed(2)} A${best} }`
    })
    return `  - date: ${day.date}
    array: ${array.id}
    irradiance: ${shownAt.toFixed(0)} W/m2
    cell_temperature: ${cell.toFixed(0)} °C
    strings:
${strings.join('\n')}`
  })
}
