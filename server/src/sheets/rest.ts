import type { Fit } from './fits/fit.ts'
import type { Choice, Ratings } from './electric.ts'
import type { Placed } from './models.ts'

/** Everything beside the electrical ratings. */
export function restAmong(pool: readonly Placed[], stc: Ratings): ReadonlyMap<string, Choice> {
  const made = new Map<string, Choice>()
  const taken = new Set(Object.values(stc).map(({ from }) => from.cell))
  const all = (field: string) =>
    pool
      .filter(({ cell }) => !taken.has(cell))
      .flatMap((from) => from.fits.filter((f) => f.field === field).map((fit) => ({ from, fit })))
  const put = (field: string, choice: Choice | null) => {
    if (choice) made.set(field, choice)
  }
  const power = stc.pmax?.fit.value
  const efficiency = only(named(all('/stc/efficiency')))
  for (const [field, choice] of sizes(all, power, efficiency?.fit.value)) put(field, choice)
  const area = metres(made.get('/size/length')) * metres(made.get('/size/width'))
  const derived = power && area ? power / area / 10 : null
  put(
    '/stc/efficiency',
    only(named(all('/stc/efficiency')).filter(({ fit }) => derived === null || Math.abs(fit.value - derived) < 1.5)) ??
      only(all('/stc/efficiency').filter(({ fit }) => derived !== null && Math.abs(fit.value - derived) < 0.16)),
  )
  put(
    '/stc/tolerance',
    only(named(all('/stc/tolerance'))) ??
      only(all('/stc/tolerance').filter(({ from }) => from.cell.table === stc.pmax?.from.cell.table)),
  )
  const heavy = all('/weight').filter(({ fit }) => {
    const kg = kilograms(fit)
    return area ? 0.8 < kg / area && kg / area < 25 : kg < 60
  })
  put('/weight', only(named(heavy)) ?? (area ? only(heavy) : null))
  for (const [field, choice] of coefficients(all)) put(field, choice)
  put(
    '/noct/temperature',
    only(named(all('/noct/temperature'))) ??
      only(all('/noct/temperature').filter(({ fit }) => fit.named > 0 || (fit.value >= 40 && fit.value <= 50))),
  )
  put(
    '/limits/operating_temperature',
    only(all('/limits/operating_temperature').filter(({ fit }) => fit.named === 3)) ??
      only(all('/limits/operating_temperature').filter(isUsualRange)),
  )
  const voc = stc.voc?.fit.value
  const isc = stc.isc?.fit.value
  const volts = all('/limits/system_voltage').filter(({ fit }) => !voc || fit.value > 1.2 * voc)
  put(
    '/limits/system_voltage',
    only(named(volts)) ??
      only(
        volts.filter(
          ({ fit }) =>
            [600, 1000, 1500].includes(fit.value) || (voc !== undefined && fit.value > 3 * voc && fit.value % 50 === 0),
        ),
      ),
  )
  const fuses = all('/limits/series_fuse').filter(({ fit }) => !isc || fit.value > 0.9 * isc)
  put(
    '/limits/series_fuse',
    only(named(fuses)) ??
      only(
        fuses.filter(
          ({ fit }) =>
            isc !== undefined && fit.value > 1.2 * isc && fit.value < 4.5 * isc + 5 && fuseSizes.has(fit.value),
        ),
      ),
  )
  put('/limits/bend', only(named(all('/limits/bend'))) ?? only(all('/limits/bend')))
  put('/limits/bend_radius', only(named(all('/limits/bend_radius'))))
  put('/cells/in_series', cells(all('/cells/in_series'), voc))
  return made
}

/** Panels are rated to work from about -40 to 85 °C; cooler ranges are those of storage and of the air, common practice, no source. */
const isUsualRange = ({ fit }: Choice): boolean =>
  fit.typed.endsWith('°F') ? fit.value <= -20 : fit.value <= -30 && Number(/\.\.(\d+)/.exec(fit.typed)?.[1]) >= 70

/** Weight of a text in kg, g or lb. */
function kilograms({ typed, value }: Fit): number {
  const unit = typed.split(' ').at(-1)
  return unit === 'lb' ? value * 0.45359237 : unit === 'g' ? value / 1000 : value
}

type All = (field: string) => readonly Choice[]

/** Standard ratings of fuses [A], IEC 60269-6 and UL 248-19 (from memory). */
const fuseSizes = new Set([4, 5, 6, 8, 10, 12, 15, 16, 20, 25, 30, 32, 35, 40])

const named = (choices: readonly Choice[]) => choices.filter(({ fit }) => fit.named >= 2)

/** The one choice, where all of the best named say the same; a text in two places is one. */
function only(choices: readonly Choice[]): Choice | null {
  const top = Math.max(...choices.map(({ fit }) => fit.named))
  const named = choices.filter(({ fit }) => fit.named === top).sort((a, b) => decimals(b.fit) - decimals(a.fit))
  // the front page praises the best of all models
  const own = named.filter(({ from }) => from.model >= 0)
  const best = own.length > 0 ? own : named
  const first = best[0]
  return first && best.every(({ fit }) => isSame(fit, first.fit)) ? first : null
}

/** The same text, in another unit, or with fewer decimals: 18.64 % in the table is 18.6 % on the front page. */
const isSame = (fine: Fit, other: Fit) =>
  fine.typed === other.typed ||
  fine.also.includes(other.typed) ||
  other.also.includes(fine.typed) ||
  (unitOf(fine) === unitOf(other) && Math.abs(fine.value - other.value) <= 0.5 * 10 ** -decimals(other) + 1e-9)

const decimals = ({ typed }: Fit) => /\.(\d+)/.exec(typed)?.[1]?.length ?? 0
const unitOf = ({ typed }: Fit) => typed.split(' ').at(-1)

const lengths: Readonly<Record<string, number>> = { mm: 0.001, cm: 0.01, m: 1, in: 0.0254 }
const metres = (choice: Choice | undefined): number =>
  choice ? choice.fit.value * (lengths[choice.fit.typed.split(' ').at(-1)!] ?? 0) : 0

/** Sides whose area agrees with power and efficiency; crates and boxes do not. */
function sizes(
  all: All,
  power: number | undefined,
  efficiency: number | undefined,
): readonly (readonly [string, Choice])[] {
  const keys = ['/size/length', '/size/width', '/size/thickness']
  const [long, wide, thick] = keys.map(all)
  const fits = (a: Choice, b: Choice) => {
    const share = power ? power / (1000 * metres(a) * metres(b)) : null
    const isNamed = a.fit.named > 0 || b.fit.named > 0
    if (share === null || !Number.isFinite(share)) return share === null && isNamed
    return efficiency
      ? Math.abs(share * 100 - efficiency) < Math.max(0.5, 0.06 * efficiency)
      : (isNamed ? 0.04 : 0.07) < share && share < 0.26
  }
  const pairs = long!
    .flatMap((a) => wide!.map((b) => [a, b] as const))
    .filter(
      ([a, b]) =>
        fits(a, b) &&
        a !== b &&
        (a.from.cell !== b.from.cell ? !pairedElsewhere(a, wide!) : true) &&
        metres(a) !== metres(b),
    )
  const rank = ([a, b]: readonly [Choice, Choice]) => a.fit.named + b.fit.named
  const top = Math.max(...pairs.map(rank))
  const best = pairs.filter((p) => rank(p) === top)
  const first = best[0]
  if (!first || !best.every(([a, b]) => isSame(a.fit, first[0].fit) && isSame(b.fit, first[1].fit))) {
    // without words the two sides of a pair may stand for each other
    const sorted = best.filter(([a, b]) => metres(a) > metres(b))
    return sorted.length === 1
      ? [
          [keys[0]!, sorted[0]![0]],
          [keys[1]!, sorted[0]![1]],
        ]
      : []
  }
  const thin = thick!.filter(({ fit, from }) => metres({ fit, from }) < 0.1)
  const own = thin.filter(({ from }) => from.cell === first[0].from.cell)
  const third =
    own[0] ?? only(named(thin)) ?? only(thin.filter(({ from }) => from.cell.table === first[0].from.cell.table))
  return [[keys[0]!, first[0]], [keys[1]!, first[1]], ...(third ? [[keys[2]!, third] as const] : [])]
}

const pairedElsewhere = (a: Choice, wide: readonly Choice[]): boolean =>
  wide.some((b) => b.from.cell === a.from.cell && a.fit.typed !== b.fit.typed)

/** Named ones first; of those without a name the sign and the size say which they are. */
function coefficients(all: All): readonly (readonly [string, Choice])[] {
  const range: Readonly<Record<string, readonly [number, number]>> = {
    pmax: [-0.6, -0.15],
    voc: [-0.45, -0.15],
    isc: [0.005, 0.15],
  }
  const made = new Map<string, Choice>()
  for (const key of ['pmax', 'voc', 'isc', 'vmp', 'imp']) {
    const choice = only(named(all(`/temperature_coefficients/${key}`)))
    if (choice && isPossible(key, choice)) made.set(key, choice)
  }
  const used = new Set([...made.values()].map(({ from }) => from.cell))
  const open = ['pmax', 'voc', 'isc'].filter((key) => !made.has(key))
  const free = (key: string) =>
    all(`/temperature_coefficients/${key}`).filter(({ fit, from }) => {
      if (used.has(from.cell) || fit.named < 0) return false
      const [low, high] = range[key]!
      return /^\S+ %/.test(fit.typed)
        ? low <= fit.value && fit.value <= high
        : /mV|V\//.test(fit.typed)
          ? key === 'voc'
          : key === 'isc'
    })
  const lows = distinct([...(open.includes('pmax') ? free('pmax') : []), ...(open.includes('voc') ? free('voc') : [])])
  if (open.includes('isc')) {
    const choice = only(free('isc'))
    if (choice) made.set('isc', choice)
  }
  if (open.includes('pmax') && open.includes('voc') && lows.length === 2) {
    const [low, high] = [...lows].sort((a, b) => a.fit.value - b.fit.value)
    const at = (choice: Choice, key: string) => free(key).find(({ from }) => from.cell === choice.from.cell)
    const [p, v] = [at(low!, 'pmax'), at(high!, 'voc')]
    if (p && v && low!.fit.value < high!.fit.value) made.set('pmax', p).set('voc', v)
  } else if (lows.length === 1) {
    const key = open.find((k) => k !== 'isc' && free(k).length === 1)
    const other = key === 'pmax' ? made.get('voc') : made.get('pmax')
    const choice = key ? free(key)[0] : undefined
    if (key && choice && other && (key === 'pmax') === choice.fit.value < other.fit.value) made.set(key, choice)
  }
  return [...made].map(([key, choice]) => [`/temperature_coefficients/${key}`, choice] as const)
}

/** Power and voltage change by tenths of a per cent per kelvin and currents by hundredths, whatever the words say; from memory. */
function isPossible(key: string, { fit: { typed, value } }: Choice): boolean {
  if (!/^\S+ %\/(?:K|°C)$/.test(typed)) return true
  return /^[pv]/.test(key) ? 0.1 <= Math.abs(value) && Math.abs(value) <= 0.8 : Math.abs(value) <= 0.2
}

const distinct = (choices: readonly Choice[]) =>
  choices.filter((c, i) => choices.findIndex(({ from }) => from.cell === c.from.cell) === i)

/** A half-cut module prints pieces, two to a cell: the voltage of a cell says which. */
function cells(choices: readonly Choice[], voc: number | undefined): Choice | null {
  const best = only(named(choices))
  if (!best || voc === undefined) return null
  const { value } = best.fit
  const isCell = (n: number) => 0.52 < voc / n && voc / n < 0.78
  const count = isCell(value) ? value : value % 2 === 0 && isCell(value / 2) ? value / 2 : null
  return count === null ? null : { ...best, fit: { ...best.fit, value: count, typed: String(count) } }
}
