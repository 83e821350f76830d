import { conceptsIn, symbolIn, type Concept } from './concepts.ts'
import type { FieldInfo } from './field-info.ts'

/** What a label speaks of, and the field that it names in a group; the first that fits. */
type Row = readonly [field: string, ...concepts: Concept[]]

const ratings: readonly Row[] = [
  ['efficiency', 'efficiency'],
  ['tolerance', 'tolerance'],
  ['temperature', 'noct', 'temperature'],
  ['voc', 'voltage', 'open'],
  ['isc', 'current', 'short'],
  ['vmp', 'voltage', 'peak'],
  ['imp', 'current', 'peak'],
  ['pmax', 'power'],
]

const rows: Readonly<Record<string, readonly Row[]>> = {
  stc: ratings,
  noct: ratings,
  temperature_coefficients: [
    ['pmax', 'power'],
    ['voc', 'voltage', 'open'],
    ['isc', 'current', 'short'],
    ['voc', 'voltage'],
    ['isc', 'current'],
  ],
  limits: [
    ['series_fuse', 'fuse'],
    ['bend_radius', 'radius'],
    ['bend', 'bend'],
    ['operating_temperature', 'operating', 'temperature'],
    ['system_voltage', 'system', 'voltage'],
  ],
  size: [
    ['length', 'length'],
    ['width', 'width'],
    ['thickness', 'thickness'],
  ],
  '': [
    ['temperature_coefficients', 'coefficient'],
    ['noct', 'noct'],
    ['size', 'size'],
    ['weight', 'weight'],
  ],
}

/** Coefficients as formulas call them. */
const ofGreek: Readonly<Record<string, string>> = {
  alpha: 'isc',
  α: 'isc',
  beta: 'voc',
  β: 'voc',
  gamma: 'pmax',
  γ: 'pmax',
}

/** The field of a group that a label of a datasheet names, in any of its languages: `Kurzschlussstrom` is `isc`. */
export function fieldNamed(label: string, { key }: FieldInfo): string | null {
  const words = label.replaceAll('_', ' ')
  const says = conceptsIn(words)
  const greek =
    key === 'temperature_coefficients' ? /^(?:t[ck] )?([a-zα-γ]+)(?: [a-z]+)?$/i.exec(words)?.[1] : undefined
  if (greek && Object.hasOwn(ofGreek, greek.toLowerCase())) return ofGreek[greek.toLowerCase()]!
  if (key === 'stc' || key === 'noct' || key === 'temperature_coefficients') {
    const symbol = symbolIn(words)
    // the voltage at Pmax is no power
    const isOfPower = symbol === 'pmax' && ['voltage', 'current'].some((one) => says.has(one as Concept))
    if (symbol && !isOfPower) return symbol
  }
  // one word of few letters is more often misspelt than a label
  if (words.length < 4) return null
  return rows[key]?.find(([, ...concepts]) => concepts.every((concept) => says.has(concept)))?.[0] ?? null
}
