import { drawn, randomFrom } from './random.ts'
import type { Row } from './rows.ts'

/**
 * Invented flexible panels. No ratings of flexible panels are public, so these are scaled from cells: what a cell of a
 * technology gives, how many pieces of it are in series, and what margins, seams and eyelets add to their area. All bands are
 * common practice, no source.
 */
interface Cells {
  readonly sort: string
  /** Of the cells. */
  readonly efficiency: readonly [number, number]
  /** V a cell. */
  readonly voc: readonly [number, number]
  /** Vmp/Voc and Imp/Isc. */
  readonly vmp: readonly [number, number]
  readonly imp: readonly [number, number]
  /** %/°C of Pmax, Voc and Isc. */
  readonly gamma: readonly [number, number]
  readonly beta: readonly [number, number]
  readonly alpha: readonly [number, number]
}

const mono: Cells = {
  sort: 'mono',
  efficiency: [0.175, 0.21],
  voc: [0.595, 0.655],
  vmp: [0.8, 0.85],
  imp: [0.92, 0.955],
  gamma: [-0.45, -0.37],
  beta: [-0.34, -0.28],
  alpha: [0.03, 0.06],
}
const perc: Cells = {
  ...mono,
  sort: 'perc',
  efficiency: [0.2, 0.226],
  voc: [0.64, 0.685],
  gamma: [-0.4, -0.34],
  beta: [-0.31, -0.26],
}
const back: Cells = {
  ...mono,
  sort: 'back-contact',
  efficiency: [0.21, 0.245],
  voc: [0.665, 0.725],
  vmp: [0.82, 0.86],
  imp: [0.93, 0.965],
  gamma: [-0.38, -0.29],
  beta: [-0.29, -0.235],
}
const poly: Cells = {
  ...mono,
  sort: 'poly',
  efficiency: [0.155, 0.186],
  voc: [0.585, 0.632],
  vmp: [0.79, 0.835],
  gamma: [-0.47, -0.39],
  beta: [-0.35, -0.29],
}
const topcon: Cells = {
  ...mono,
  sort: 'topcon',
  efficiency: [0.215, 0.24],
  voc: [0.68, 0.715],
  gamma: [-0.33, -0.29],
  beta: [-0.27, -0.24],
}

/** Sides of whole cells [mm] and how many pieces they are cut into. */
const wafers = [125, 156, 156.75, 158.75, 166, 182]
const cuts = [1, 1, 2, 2, 3, 4, 5, 6]
const counts = [24, 28, 30, 32, 32, 33, 33, 36, 36, 36, 36, 36, 38, 40, 40, 44]

/** @param construction a second way to lay cells out and to print, which nothing was chosen by */
export function flexibles(count: number, seed: number, construction: 'scaled' | 'laid out' = 'scaled'): Row[] {
  const draw = drawn(randomFrom(seed))
  const rows: Row[] = []
  while (rows.length < count) {
    const row = construction === 'scaled' ? scaled(draw, rows.length) : laidOut(draw, rows.length)
    if (row) rows.push(row)
  }
  return rows
}

type Draw = ReturnType<typeof drawn>

function scaled(draw: Draw, i: number): Row | null {
  const cells = draw.pick([mono, mono, perc, back, back, poly, poly, topcon])
  const n = draw.pick(counts)
  const piece = ((draw.pick(wafers) / 1000) ** 2 * 0.98) / draw.pick(cuts)
  const cover = draw.within(0.6, 0.92)
  const area = (n * piece) / cover
  const aspect = draw.within(1, 3.6)
  return rowOf(draw, i, cells, n, piece, cover, { length: Math.sqrt(area * aspect), width: Math.sqrt(area / aspect) })
}

/** Cells in rows, with gaps between them, margins around and a strip for the junction box. */
function laidOut(draw: Draw, i: number): Row | null {
  const cells = draw.pick([mono, perc, perc, back, poly, topcon])
  const rowsOfCells = draw.pick([2, 3, 4, 4, 6])
  const along = draw.pick([6, 7, 8, 9, 10, 11, 12])
  const n = rowsOfCells * along
  if (n < 24 || n > 44) return null
  const wafer = draw.pick(wafers) / 1000
  const cut = draw.pick(cuts)
  const gap = draw.within(0.002, 0.006)
  const margin = draw.within(0.012, 0.045)
  const strip = draw.pick([0, 0.03, 0.06])
  const length = along * (wafer / cut + gap) + 2 * margin + strip
  const width = rowsOfCells * (wafer + gap) + 2 * margin
  const piece = (wafer ** 2 * 0.985) / cut
  const cover = (n * piece) / (length * width)
  if (cover < 0.58 || cover > 0.93) return null
  return rowOf(draw, i, cells, n, piece, cover, { length: Math.max(length, width), width: Math.min(length, width) })
}

function rowOf(
  draw: Draw,
  i: number,
  cells: Cells,
  n: number,
  piece: number,
  cover: number,
  { length, width }: { length: number; width: number },
): Row | null {
  const efficiency = draw.within(...cells.efficiency)
  const power = 1000 * n * piece * efficiency
  if (power < 21 || power > 250) return null
  const pmax = power < 50 ? Math.round(power) : 5 * Math.round(power / 5)
  const voc = Number((n * draw.within(...cells.voc)).toFixed(1))
  const vmp = Number((voc * draw.within(...cells.vmp)).toFixed(1))
  const imp = Number((pmax / vmp).toFixed(2))
  const isc = Number((imp / draw.within(...cells.imp)).toFixed(2))
  const size = { length: Math.round(1000 * length), width: Math.round(1000 * width) }
  const noct = draw.chance(0.5) ? Math.round(draw.within(43, 48)) : null
  const full = noct !== null && draw.chance(0.4)
  const gamma = Number(draw.within(...cells.gamma).toFixed(2))
  const hot = (noct ?? 45) - 25
  const thickness = draw.within(1.8, 3.4)
  const weight = (size.length * size.width * thickness * draw.within(1.15, 1.4)) / 1e6
  return {
    id: `flexible ${i + 1}`,
    sort: cells.sort,
    construction: 'flexible',
    surface: draw.pick(['ETFE', 'ETFE', 'PET']),
    pmax_w: pmax,
    pmax_is: 'listed',
    voc_v: voc,
    vmp_v: vmp,
    imp_a: imp,
    isc_a: isc,
    cells_in_series: n,
    length_mm: size.length,
    width_mm: size.width,
    area_m2: (size.length * size.width) / 1e6,
    thickness_mm: draw.chance(0.7) ? Number(thickness.toFixed(1)) : null,
    weight_kg: Number(weight.toFixed(weight < 1 ? 2 : 1)),
    gamma_pmp_pct_per_c: gamma,
    beta_voc_pct_per_c: Number(draw.within(...cells.beta).toFixed(2)),
    beta_voc_v_per_c: null,
    alpha_isc_pct_per_c: Number(draw.within(...cells.alpha).toFixed(3)),
    noct_c: noct,
    imp_noct_a: full ? Number((imp * 0.8 * (1 + 0.0005 * hot)).toFixed(2)) : null,
    vmp_noct_v: full ? Number((vmp * (1 + (gamma / 100 - 0.0005) * hot)).toFixed(1)) : null,
    efficiency_of_cells_pct: Number(((100 * pmax) / (1000 * n * piece)).toFixed(1)),
    cover,
    family: null,
  }
}
