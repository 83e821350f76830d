import { conceptsIn, symbolIn, type Concept } from './concepts.ts'
import { numbersIn, unitAlone, unitInLabel, type Decimal, type Printed } from './numbers.ts'
import type { Cell } from './tables.ts'

/** What a cell would say if it were the value of a field. */
export interface Fit {
  readonly field: string
  /** As a careful person types it; another printed unit or limit is as good. */
  readonly typed: string
  readonly also: readonly string[]
  /** A plain number in the first printed unit. */
  readonly value: number
  /** How plainly the label says so: 3 names it, 0 says nothing, below 0 names something else. */
  readonly named: number
}

/** One printed cell with the fields that it may be the value of. */
export interface Candidate {
  readonly cell: Cell
  readonly says: ReadonlySet<Concept>
  readonly fits: readonly Fit[]
}

export function candidateOf(cell: Cell, decimal: Decimal): Candidate {
  const words = `${cell.label} ${cell.heads.join(' ')}`
  const says = conceptsIn(words)
  const heading = conceptsIn(cell.heading)
  const hint =
    cell.unit ??
    [...cell.heads]
      .reverse()
      .map((head) => unitAlone(head) ?? unitInLabel(head))
      .find((u) => u !== null) ??
    unitInLabel(cell.label)
  const numbers = numbersIn(cell.text, decimal)
  const lure =
    says.has('pallet') || heading.has('pallet') || says.has('rear') || heading.has('rear') || cell.heads.some(isShare)
  // heads of two columns in one: which of them is this one's cannot be told
  const ambiguous = new Set(cell.heads.flatMap((head) => unitAlone(head) ?? unitInLabel(head) ?? [])).size > 1
  const fits =
    numbers.length === 0 || lure || ambiguous
      ? []
      : kinds.flatMap((kind) => kind({ cell, words, says, heading, hint, numbers }))
  return { cell, says, fits: fits.filter((fit) => fit.named > -3) }
}

/** A column headed in per cent is a gain of the rear side. */
const isShare = (head: string) => /^[+~]?\s?\d+(?:[.,]\d+)?\s?%/.test(head.trim())

interface Asked {
  readonly cell: Cell
  readonly words: string
  readonly says: ReadonlySet<Concept>
  readonly heading: ReadonlySet<Concept>
  readonly hint: string | null
  readonly numbers: readonly Printed[]
}

const has = (says: ReadonlySet<Concept>, ...concepts: Concept[]) => concepts.some((c) => says.has(c))

/** Single numbers of a unit: the number itself or, where none is printed behind it, in the unit of the label. */
function singles({ numbers, hint }: Asked, units: readonly string[]): readonly Printed[] {
  const main = numbers.filter((n) => n.join !== 'spread')
  if (main.some((n) => n.join === 'range' || n.join === 'by')) return []
  const own = main.filter((n) => n.unit !== null && units.includes(n.unit))
  if (own.length) return own
  const [first, second] = main
  return first && !second && first.unit === null && hint !== null && units.includes(hint)
    ? [{ ...first, unit: hint }]
    : []
}

const text = ({ number, unit }: Printed) => `${number} ${unit}`.trim()

function fit(field: string, numbers: readonly Printed[], named: number, typed = numbers.map(text)): readonly Fit[] {
  const [first, ...also] = typed
  return first === undefined ? [] : [{ field, typed: first, also, value: numbers[0]!.value, named }]
}

const kinds: readonly ((asked: Asked) => readonly Fit[])[] = [
  electric,
  percents,
  coefficients,
  temperatures,
  sizes,
  others,
]

function electric(asked: Asked): readonly Fit[] {
  const { says, words, cell } = asked
  if (says.has('coefficient') || (says.has('parts') && !has(says, 'fuse', 'open', 'short', 'peak'))) return []
  const symbol = symbolIn(words)
  const watts = singles(asked, ['W', 'kW'])
  const volts = singles(asked, ['V'])
  const amps = singles(asked, ['A'])
  const value = (watts[0] ?? volts[0] ?? amps[0])?.value
  if (value === undefined || value <= 0) return []
  const odd = says.has('tolerance') && !symbol ? -3 : 0
  const other = (...concepts: Concept[]) => (has(says, ...concepts) ? -3 : 0)
  if (watts.length) {
    const named = symbol === 'pmax' || says.has('power') ? 3 : says.has('peak') ? 2 : symbol ? -3 : 0
    return watts.length === 1 && value >= 2 && value < 900 ? fit('pmax', watts, odd || named) : []
  }
  if (volts.length) {
    const system = has(says, 'system', 'fuse') ? 3 : 0
    const limits =
      value >= 24 && value <= 2000 && Number.isInteger(value)
        ? fit(
            '/limits/system_voltage',
            volts,
            symbol || has(says, 'open') ? -3 : system || (says.has('peak') && value > 250 ? 2 : 0),
          )
        : []
    if (value > 250 || volts.length > 1) return limits
    const open = symbol === 'voc' || (says.has('open') && symbol !== 'vmp')
    const peak = symbol === 'vmp' || (says.has('peak') && !open)
    const s = (system && !symbol ? -3 : 0) + odd
    return [
      ...fit('voc', volts, s || (open ? 3 : peak ? -3 : 0)),
      ...fit('vmp', volts, s || (peak ? 3 : open ? -3 : 0)),
      ...limits,
    ]
  }
  const fuse = says.has('fuse') || (says.has('system') && !symbol && cell.columns === 1)
  const short = symbol === 'isc' || (says.has('short') && symbol !== 'imp')
  const peak = symbol === 'imp' || (says.has('peak') && !short)
  const s = odd || (fuse ? -3 : 0) || other('parts')
  const limits =
    Number.isInteger(value) && value <= 60
      ? fit('/limits/series_fuse', amps, symbol || short ? -3 : says.has('fuse') ? 3 : fuse ? 1 : peak ? -2 : 0)
      : []
  if (amps.length > 1) return limits
  return [
    ...fit('isc', amps, s || (short ? 3 : peak ? -3 : 0)),
    ...fit('imp', amps, s || (peak ? 3 : short ? -3 : 0)),
    ...limits,
  ]
}

function percents(asked: Asked): readonly Fit[] {
  const { says, numbers, hint, words } = asked
  const [first, second, third] = numbers
  const unit = numbers.find((n) => n.unit)?.unit ?? hint
  if (!first || third || (unit !== '%' && unit !== 'W')) return []
  const pair =
    second && (second.join === 'range' || second.join === 'slash' || (second.signed === '-' && first.signed === '+'))
  const spread = !second && first.join === 'spread'
  const high = !second && first.signed === '+'
  if (pair || spread || high) {
    if (first.value > 20 || says.has('coefficient')) return []
    const named = says.has('tolerance')
      ? 3
      : has(says, 'parts', 'cells', 'temperature', 'efficiency')
        ? -3
        : has(says, 'power')
          ? 2
          : 0
    const [low, up] = pair
      ? [Math.min(first.value, second.value), Math.max(first.value, second.value)]
      : spread
        ? [-first.value, first.value]
        : [0, first.value]
    const typed = spread ? `±${first.number} ${unit}` : `${low < 0 ? low : '0'}/+${up} ${unit}`
    return [{ field: '/stc/tolerance', typed, also: [], value: up, named }]
  }
  if (second && second.join !== 'spread') return []
  if (unit === '%' && says.has('tolerance') && first.value <= 10)
    return [{ field: '/stc/tolerance', typed: `±${first.number} %`, also: [], value: first.value, named: 3 }]
  const percent = singles(asked, ['%'])
  if (!percent.length || first.value < 3 || first.value > 30) return []
  const cell = says.has('cells') || /\bcell/i.test(words)
  return fit(
    '/stc/efficiency',
    percent,
    cell || has(says, 'tolerance', 'coefficient') ? -3 : says.has('efficiency') ? 3 : 0,
  )
}

function coefficients(asked: Asked): readonly Fit[] {
  const { says, words } = asked
  const symbol = symbolIn(words)
  const named = (want: string, concept: Concept, greek: RegExp) =>
    symbol
      ? symbol === want
        ? 3
        : -3
      : greek.test(words) || says.has(concept)
        ? 3
        : has(says, 'power', 'voltage', 'current')
          ? -3
          : 0
  const relative = singles(asked, ['%/K', '%/°C', '%/°F', 'ppm/K'])
  const volts = singles(asked, ['mV/K', 'mV/°C', 'V/K', 'V/°C'])
  const amps = singles(asked, ['mA/K', 'mA/°C', 'A/K', 'A/°C'])
  const watts = singles(asked, ['W/K', 'W/°C', 'mW/K', 'mW/°C'])
  const at = (key: string) => `/temperature_coefficients/${key}`
  const one = relative[0] ?? volts[0] ?? amps[0] ?? watts[0]
  if (!one) return []
  const all = (list: readonly Printed[]) => list.length > 0
  const vmp = symbol === 'vmp' ? fit(at('vmp'), [...relative, ...volts], 3) : []
  const imp = symbol === 'imp' ? fit(at('imp'), [...relative, ...amps], 3) : []
  return [
    ...(all(relative) || all(watts) ? fit(at('pmax'), [...relative, ...watts], named('pmax', 'power', /[γδ]/)) : []),
    ...(all(relative) || all(volts) ? fit(at('voc'), [...relative, ...volts], named('voc', 'voltage', /β/)) : []),
    ...(all(relative) || all(amps) ? fit(at('isc'), [...relative, ...amps], named('isc', 'current', /α/)) : []),
    ...vmp,
    ...imp,
  ]
}

function temperatures(asked: Asked): readonly Fit[] {
  const { says, numbers, hint, words } = asked
  const main = numbers.filter((n) => n.join !== 'spread')
  const [low, high] = main
  const unit = numbers.find((n) => n.unit)?.unit ?? hint
  if (!low || unit !== '°C') return []
  if (
    high &&
    (high.join === 'range' || high.join === 'slash') &&
    low.value < 0 &&
    high.value >= 40 &&
    (high.unit ?? unit) === '°C'
  ) {
    const named = has(says, 'storage') ? -3 : has(says, 'operating') ? 3 : says.has('temperature') ? 2 : 0
    return [
      {
        field: '/limits/operating_temperature',
        typed: `${low.number}..${high.number} °C`,
        also: [],
        value: low.value,
        named,
      },
    ]
  }
  if (high && high.unit !== '°F') return []
  const spread = numbers.some((n) => n.join === 'spread')
  const named = says.has('noct')
    ? 3
    : /\bt ?no/i.test(words)
      ? 2
      : has(says, 'storage', 'coefficient')
        ? -3
        : spread && says.has('temperature')
          ? 2
          : spread
            ? 1
            : 0
  return low.value >= 36 && low.value <= 60 ? fit('/noct/temperature', [{ ...low, unit: '°C' }], named) : []
}

function sizes(asked: Asked): readonly Fit[] {
  const { says, numbers, hint, heading } = asked
  if (has(says, 'parts') && !has(says, 'thickness', 'size')) return []
  const metric = ['mm', 'cm', 'm']
  const sides = numbers.map((n) => ({ ...n, unit: n.unit ?? hint }))
  const groups: (typeof sides)[] = []
  for (const side of sides)
    if (side.join === 'by') groups.at(-1)?.push(side)
    else groups.push([side])
  const lengths = groups.filter(
    (g) => g.length >= 2 && g.length <= 3 && g[0]!.unit !== null && [...metric, 'in'].includes(g[0]!.unit),
  )
  const named = has(says, 'size', 'length', 'width', 'thickness') ? 3 : 0
  if (lengths.length) {
    const keys = ['length', 'width', 'thickness']
    const turned = /\(\s?(?:w|b|width|breite|ancho|largeur|breedte)\s?(?:x|×|\*)\s?(?:l|h|length|height)/i.test(
      asked.words,
    )
    return keys.flatMap((key, i) => {
      const all = lengths.flatMap((g) => {
        const order = turned && g.length > 1 ? [g[1]!, g[0]!, ...g.slice(2)] : g
        return order[i] ? [order[i]] : []
      })
      return fit(`/size/${key}`, all, named)
    })
  }
  const one = singles(asked, [...metric, 'in']).filter((n) => n.value > 0)
  if (!one.length || has(says, 'radius', 'bend'))
    return one.length && says.has('radius') ? fit('/limits/bend_radius', one, 3) : []
  const exact = (key: Concept) =>
    says.has(key)
      ? 3
      : has(says, 'length', 'width', 'thickness')
        ? -3
        : has(says, 'parts') || heading.has('pallet')
          ? -3
          : 0
  const thin = one[0]!.unit === 'mm' && one[0]!.value <= 60
  return thin
    ? fit('/size/thickness', one, exact('thickness'))
    : [...fit('/size/length', one, exact('length')), ...fit('/size/width', one, exact('width'))]
}

function others(asked: Asked): readonly Fit[] {
  const { says, numbers } = asked
  const kilograms = singles(asked, ['kg', 'lb', 'g'])
  const weight =
    kilograms.length && kilograms[0]!.value > 0
      ? fit(
          '/weight',
          kilograms,
          has(says, 'parts') && !says.has('weight')
            ? -3
            : /rahmen|frame|cadre|marco|cornice/i.test(asked.words)
              ? -3
              : says.has('weight')
                ? 3
                : 0,
        )
      : []
  const angle = singles(asked, ['deg']).filter((n) => n.value >= 0 && n.value <= 360)
  const bend = angle.length
    ? fit(
        '/limits/bend',
        angle.map((n) => ({ ...n, unit: 'deg' })),
        says.has('bend') ? 3 : 0,
      )
    : []
  const [first] = numbers
  const tied = numbers.slice(1).filter((n) => n.unit === null)
  const product = tied.length === 2 && tied[1]!.join === 'by' ? tied[0]!.value * tied[1]!.value : null
  const count =
    first &&
    first.unit === null &&
    asked.hint === null &&
    Number.isInteger(first.value) &&
    first.value >= 4 &&
    first.value <= 400
  const named =
    says.has('efficiency') || has(says, 'parts') ? -3 : says.has('cells') ? 3 : product === first?.value ? 2 : -3
  const cells =
    count && (tied.length === 0 || named === 3 || product === first.value)
      ? fit('/cells/in_series', [{ ...first, unit: null }], named, [first.number])
      : []
  return [...weight, ...bend, ...cells]
}
