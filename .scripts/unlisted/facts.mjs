// Invented products: ratings of real rows, or small laminates cut from them, as a sheet prints them.

const pick = (random, list) => list[Math.floor(random() * list.length)]
const round = (value, digits) => Number(value.toFixed(digits))

/** One to `most` models of one product. */
export function productOf(rows, random, most) {
  const base = pick(random, rows)
  const isFlexible = random() < 0.6
  const count = 1 + Math.floor(random() * most)
  const aspect = 1.3 + random()
  const letters = pick(random, ['KV', 'ORN', 'Skua', 'Brill', 'TX', 'Lodge', 'AQ', 'Fen'])
  const models = Array.from({ length: count }, (_, i) =>
    isFlexible
      ? cut(base, [16, 18, 24, 32, 33, 36, 40, 44][(i * 2 + 1) % 8], i % 2 ? 1 : 0.5, aspect)
      : graded(base, i),
  ).sort((a, b) => a.pmax - b.pmax)
  const form = pick(random, ['# N', '#-N', '# N W', '#N-M', '# N Flex'])
  const used = new Set()
  for (const m of models) {
    m.name = form.replace('#', letters).replace('N', m.pmax).replace('M', m.cells)
    if (used.has(m.name)) m.name += ' B'
    used.add(m.name)
  }
  const thickness = isFlexible ? pick(random, [1.5, 2, 2.5, 3]) : pick(random, [30, 35, 40])
  const limits = {
    system: pick(random, isFlexible ? [100, 600, 1000] : [1000, 1500]),
    fuse: pick(random, [15, 20, 25]),
    bend: isFlexible ? pick(random, [30, 180, 240]) : null,
    low: -40,
    high: pick(random, [80, 85]),
  }
  return { models, isFlexible, thickness, limits, tolerance: pick(random, [3, 5]) }
}

function cut(row, cells, part, aspect) {
  const n = cells / row.cells
  const [vmp, voc] = [round(row.vmp * n, 1), round(row.voc * n, 1)]
  const [imp, isc] = [round(row.imp * part, 2), round(row.isc * part, 2)]
  const area = row.length * row.width * n * part
  const length = Math.round(Math.sqrt(area * aspect))
  return withNoct({
    ...row,
    cells,
    vmp,
    voc,
    imp,
    isc,
    pmax: Math.round(vmp * imp),
    length,
    width: Math.round(area / length),
    weight: round((area / 1e6) * 3.4, 1),
  })
}

/** Power classes of one panel, 5 W apart. */
function graded(row, i) {
  const pmax = Math.round(row.pmax / 5) * 5 + 5 * i
  const vmp = round(row.vmp + 0.2 * i, 1)
  const imp = round(pmax / vmp, 2)
  return withNoct({
    ...row,
    pmax,
    vmp,
    imp,
    voc: round(row.voc + 0.2 * i, 1),
    isc: round(Math.max(row.isc, imp * 1.04) + 0.02 * i, 2),
    weight: round((row.length * row.width * 11.2) / 1e6, 1),
  })
}

const withNoct = (m) => ({
  ...m,
  efficiency: round((1e5 * m.pmax) / (m.length * m.width), 1),
  at800: {
    pmax: round(m.pmax * 0.742, 1),
    vmp: round(m.vmp * 0.925, 1),
    imp: round((m.pmax * 0.742) / (m.vmp * 0.925), 2),
    voc: round(m.voc * 0.937, 1),
    isc: round(m.isc * 0.808, 2),
  },
})

/** Rows of the open ratings that say enough. */
export const usable = (rows) =>
  rows.flatMap((r) => {
    const n = (key) => Number(r[key])
    const [length, width] = [n('length_mm'), n('width_mm')]
    if (!length || !width || r.pmax_is === 'product' || !/c-Si/.test(r.technology) || !n('cells_in_series')) return []
    const [gamma, beta, alpha] = [n('gamma_pmp_pct_per_c'), n('beta_voc_pct_per_c'), n('alpha_isc_pct_per_c')]
    if (!gamma || !beta || !alpha || !n('noct_c') || gamma > beta - 0.02) return []
    const efficiency = (n('pmax_w') / (length * width)) * 1e5
    if (efficiency < 10 || efficiency > 24 || n('voc_v') / n('cells_in_series') < 0.55) return []
    return [
      {
        pmax: n('pmax_w'),
        voc: n('voc_v'),
        isc: n('isc_a'),
        vmp: n('vmp_v'),
        imp: n('imp_a'),
        cells: n('cells_in_series'),
        length,
        width,
        noct: Math.round(n('noct_c')),
        gamma: round(gamma, 2),
        beta: round(beta, 2),
        alpha: round(alpha, 3),
      },
    ]
  })

/** The handwriting of a sheet. */
export function handOf(random, language) {
  const comma = language !== 'en'
  const one = (...list) => pick(random, list)
  return {
    comma,
    gap: one(' ', ' ', '', '\u00a0', '\u202f'),
    minus: one('-', '−', '–'),
    times: one(' x ', ' × ', '×', 'x', ' * '),
    watt: one('W', 'W', 'Wp'),
    kelvin: one('%/°C', '%/K', '%/℃', '% / K'),
    pounds: !comma && random() < 0.3,
    inches: !comma && random() < 0.25,
    spread: random() < 0.2,
    noctSpread: one('', '', ' ± 2', '±3'),
    range: comma ? one(' … ', '…', ' / ') : one(' to ', ' ~ ', '…', ' / '),
    rising: random() < 0.5,
    tolerance: one('0/+#', '±#', '0 ~ +#', '-0/+#'),
    toleranceUnit: one('W', '%'),
    bothLimits: random() < 0.15,
    fahrenheit: !comma && random() < 0.1,
  }
}

/** Every fact of a model: { key, bare, unit, fields: { pointer: [accepted texts] } }. */
export function factsOf(product, model, hand) {
  const n = (value, digits) => {
    const [whole, part] = Math.abs(value).toFixed(digits).split('.')
    return (
      (value < 0 ? hand.minus : hand.rising && digits === 9 ? '+' : '') +
      whole +
      (part ? (hand.comma ? ',' : '.') + part : '')
    )
  }
  const facts = []
  const put = (key, bare, unit, fields, text = unit ? `${bare}${unit === '°' ? '' : hand.gap}${unit}` : bare) =>
    facts.push({ key, bare, unit, text, fields })
  const one = (key, field, value, digits, unit, shown = unit) =>
    put(key, n(value, digits), shown, { [field]: [`${value.toFixed(digits)} ${unit}`.trim()] })
  const units = { pmax: 'W', vmp: 'V', imp: 'A', voc: 'V', isc: 'A' }
  for (const [at, values, condition] of [
    ['stc', model, 'stc'],
    ['noct', model.at800, 'noct'],
  ])
    for (const key of ['pmax', 'vmp', 'imp', 'voc', 'isc']) {
      const digits = key === 'pmax' ? (condition === 'noct' ? 1 : 0) : units[key] === 'V' ? 1 : 2
      one(
        `${at} ${key}`,
        `/${condition}/${key}`,
        values[key],
        digits,
        units[key],
        key === 'pmax' ? hand.watt : units[key],
      )
    }
  one('efficiency', '/stc/efficiency', model.efficiency, 1, '%')
  const t = product.tolerance
  const unit = hand.toleranceUnit
  put('tolerance', hand.tolerance.replace('#', t), unit, {
    '/stc/tolerance': hand.tolerance.startsWith('±') ? [`±${t} ${unit}`] : [`0/+${t} ${unit}`],
  })
  for (const [key, field, digits] of [
    ['gamma', 'pmax', 2],
    ['beta', 'voc', 2],
    ['alpha', 'isc', 3],
  ]) {
    const value = model[key]
    const bare = (value > 0 && hand.rising ? '+' : '') + n(value, digits)
    const spread = hand.spread ? `(${bare}±${n(key === 'alpha' ? 0.015 : 0.05, key === 'alpha' ? 3 : 2)})` : bare
    put(key, spread, hand.kelvin, { [`/temperature_coefficients/${field}`]: [`${value.toFixed(digits)} %/K`] })
  }
  put('noct', `${model.noct}${hand.noctSpread}`, '°C', { '/noct/temperature': [`${model.noct} °C`] })
  const mm = (value) => n(value, value % 1 ? 1 : 0)
  const inch = (value) => (value / 25.4).toFixed(1)
  const sides = { '/size/length': model.length, '/size/width': model.width, '/size/thickness': product.thickness }
  const accepted = (value) => [`${value} mm`, ...(hand.inches ? [`${inch(value)} in`] : [])]
  const all = Object.fromEntries(Object.entries(sides).map(([k, v]) => [k, accepted(v)]))
  const row = Object.values(sides)
  const bare = row.map(mm).join(hand.times)
  put('size', bare, 'mm', all, `${bare}${hand.gap}mm${hand.inches ? ` (${row.map(inch).join(hand.times)} in)` : ''}`)
  for (const [key, pointer] of [
    ['length', '/size/length'],
    ['width', '/size/width'],
    ['thickness', '/size/thickness'],
  ])
    put(key, mm(sides[pointer]), 'mm', { [pointer]: [`${sides[pointer]} mm`] })
  const lb = (model.weight * 2.20462).toFixed(1)
  put(
    'weight',
    n(model.weight, 1),
    'kg',
    { '/weight': [`${model.weight.toFixed(1)} kg`, ...(hand.pounds ? [`${lb} lb`] : [])] },
    `${n(model.weight, 1)}${hand.gap}kg${hand.pounds ? ` / ${lb} lb` : ''}`,
  )
  put('cells', `${model.cells}`, '', { '/cells/in_series': [`${model.cells}`] })
  const { system, fuse, bend, low, high } = product.limits
  const volts = hand.bothLimits
    ? `${system}${hand.gap}V (IEC) / 600${hand.gap}V (UL)`
    : `${system}${hand.gap}V${hand.gap === '' ? '' : ' DC'}`
  put(
    'system',
    `${system}`,
    'V',
    { '/limits/system_voltage': [`${system} V`, ...(hand.bothLimits ? ['600 V'] : [])] },
    volts,
  )
  put('fuse', `${fuse}`, 'A', { '/limits/series_fuse': [`${fuse} A`] })
  const f = (c) => Math.round(c * 1.8 + 32)
  put(
    'operating',
    `${n(low, 0)}${hand.range}+${high}`,
    '°C',
    {
      '/limits/operating_temperature': [`${low}..${high} °C`, ...(hand.fahrenheit ? [`${f(low)}..${f(high)} °F`] : [])],
    },
    `${n(low, 0)}${hand.gap}°C${hand.range}+${high}${hand.gap}°C${hand.fahrenheit ? ` (${n(f(low), 0)}${hand.range}+${f(high)} °F)` : ''}`,
  )
  if (bend) put('bend', `${bend}`, '°', { '/limits/bend': [`${bend} deg`] })
  return new Map(facts.map((fact) => [fact.key, fact]))
}
