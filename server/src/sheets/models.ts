import { conditionIn, conceptsIn, folded, symbolIn } from '../records/concepts.ts'
import type { Candidate } from './fits.ts'
import { unitAlone, unitInLabel } from './numbers.ts'
import { bareName } from './sheet.ts'

export type Condition = 'stc' | 'noct' | null

/** A candidate of one model, or of all: -1. */
export interface Placed extends Candidate {
  readonly model: number
  readonly condition: Condition
  /** Its table and, where conditions stand side by side, its column. */
  readonly block: string
}

/** Finds the products of a sheet, as columns or rows of its tables, and whose each candidate is. */
export function modelsOf(candidates: readonly Candidate[]): { names: readonly string[]; placed: readonly Placed[] } {
  const tables = new Map<number, Candidate[]>()
  for (const one of candidates) tables.set(one.cell.table, [...(tables.get(one.cell.table) ?? []), one])
  const named = withSingles([...tables.values()].map((cells) => ({ cells, name: namer(cells) })))
  const names: string[] = []
  for (const { cells, name } of named) {
    if (!name || !isElectrical(cells)) continue
    for (const { cell } of cells) {
      const own = cell.column < 0 && !name.rows && cell.columns > 1 ? '' : name.of(cell)
      if (own && indexOf(names, own) < 0) names.push(own)
    }
  }
  if (names.length === 0) names.push(...unnamed([...tables.values()]))
  const count = Math.max(1, names.length)
  const placed = named.flatMap(({ cells, name }) =>
    cells.map((one): Placed => {
      const { cell } = one
      const condition = conditionOf(one, name?.rows ?? false)
      const line = name?.rows ? conditionIn(cell.label) : null
      const block = `${cell.table} ${line ?? cell.heads.map((h) => conditionIn(h)).find(Boolean) ?? ''}`
      const at = { ...one, condition, block }
      if (count === 1 || cell.column < 0) return { ...at, model: -1 }
      const own = name ? indexOf(names, name.of(cell)) : -1
      if (own >= 0) return { ...at, model: own }
      // ratings of another product, which no heading names
      if (cell.columns === 1 && !name && isElectrical(cells)) return { ...at, model: -2 }
      if (cell.columns === 1) return { ...at, model: names.map(bareName).indexOf(bareName(cell.label)) }
      return { ...at, model: cell.columns === count ? cell.column : -2 }
    }),
  )
  return { names, placed: placed.filter(({ model }) => model !== -2) }
}

interface Namer {
  /** Models are rows, parameters columns. */
  readonly rows: boolean
  readonly of: (cell: Candidate['cell']) => string
}

/** What distinguishes the models of a table; null for a list. */
function namer(cells: readonly Candidate[]): Namer | null {
  const columns = Math.max(...cells.map(({ cell }) => cell.columns))
  if (columns < 2) return null
  if (isTurned(cells)) return { rows: true, of: nameOfRow(cells) }
  const own = cells.filter(({ cell }) => cell.column >= 0).map(({ cell }) => cell.heads.filter(isName))
  const common = new Set((own[0] ?? []).filter((part) => own.every((parts) => parts.includes(part))))
  const of = ({ heads }: Candidate['cell']) => {
    const parts = heads.filter(isName)
    const apart = parts.filter((part) => !common.has(part)).join(' ')
    return /\p{L}{2}/u.test(apart) ? apart : parts.join(' ')
  }
  const distinct = new Set(cells.flatMap(({ cell }) => (cell.column >= 0 ? [of(cell)] : [])).filter(Boolean)).size
  const conditions = new Set(cells.flatMap(({ cell }) => cell.heads.map(conditionIn).filter(Boolean)))
  return distinct < 1 || (distinct < 2 && conditions.size < 2) ? null : { rows: false, of }
}

/** A row whose label is a condition alone is of the model above it. */
function nameOfRow(cells: readonly Candidate[]): Namer['of'] {
  const names = new Map<number, string>()
  for (const { cell } of cells) {
    const name =
      conditionIn(cell.label) === null ? cell.label : cell.label.replace(/\b(?:stc|noct|nmot|tonc|tnfc)\b/gi, '').trim()
    names.set(cell.row, name || (names.get(cell.row - 1) ?? ''))
  }
  return ({ row }) => names.get(row) ?? ''
}

interface Named {
  readonly cells: readonly Candidate[]
  readonly name: Namer | null
}

/** Ratings of one product under its name, on a sheet that has more of them: each is a model of its own. */
function withSingles(tables: readonly Named[]): readonly Named[] {
  const headOf = ({ cells, name }: Named) =>
    name || !isElectrical(cells)
      ? undefined
      : cells[0]!.cell.heads.filter((h) => isName(h) && /\d/.test(h) && /\p{L}/u.test(h)).at(-1)
  const heads = new Set(tables.map(headOf).filter(Boolean))
  const others = tables.some(({ cells, name }) => name && isElectrical(cells))
  if (heads.size === 0 || (heads.size < 2 && !others)) return tables
  return tables.map((table) => {
    const head = headOf(table)
    return head === undefined ? table : { ...table, name: { rows: false, of: () => head } }
  })
}

const heading =
  /\b(?:data|daten|dati|datos|donnees|gegevens|characteristics?|caract\w+|performance|specification\w*|conditions?|model|modell?|modele|modello|modelo|type|typ|electrical|parameter\w*)\b/

/** Columns that no head names are called by their power, or by their place. */
function unnamed(tables: readonly (readonly Candidate[])[]): readonly string[] {
  const wide = tables.filter(
    (cells) =>
      isElectrical(cells) &&
      !isTurned(cells) &&
      cells.every(({ cell }) => cell.heads.every((h) => conditionIn(h) === null && !/^\+?\d+ ?%/.test(h))),
  )
  const widest = [...wide].sort((a, b) => columnsOf(b) - columnsOf(a))[0]
  if (!widest || columnsOf(widest) < 2) return []
  // the ticks of an axis are one wide row in a list
  if (new Set(widest.filter(({ cell }) => cell.column > 0).map(({ cell }) => cell.row)).size < 3) return []
  const power = (i: number) =>
    widest.find(({ cell, fits }) => cell.column === i && fits.some((f) => f.field === 'pmax' && f.named >= 0))?.cell
      .text
  const names = Array.from({ length: columnsOf(widest) }, (_, i) => power(i) ?? `column ${i + 1}`)
  return new Set(names).size === names.length ? names : names.map((_, i) => `column ${i + 1}`)
}

const columnsOf = (cells: readonly Candidate[]): number => Math.max(...cells.map(({ cell }) => cell.columns))

const isName = (text: string): boolean => {
  if (
    unitAlone(text) !== null ||
    text.length > 24 ||
    heading.test(folded(text)) ||
    /^(?:value|wert|valor|valeur|waarde|valore|unit|einheit|min|max|typ)\.?$/i.test(text)
  )
    return false
  if (!/\d/.test(text) && saysField(text)) return false
  const rest = text
    .replace(/\b(?:stc|noct|nmot|tonc|tnfc)\b|(?<![\d.,])[\d.,]+ ?W\/m[²2]/gi, '')
    .replace(/[^\p{L}\p{N}]/gu, '')
  return rest.length > 0
}

/** In a table whose rows are models a column has one unit and a row has several. */
function isTurned(cells: readonly Candidate[]): boolean {
  const full = cells.filter(({ cell }) => cell.columns > 1 && cell.column >= 0)
  const dimension = ({ cell }: Candidate) =>
    /(?<![%a-z°])([%a-z°]+(?:\/\S+)?)\)?$/i.exec(cell.text.replace(/\([^()]*\)$/, '').trim())?.[1] ??
    cell.unit ??
    cell.heads.map(unitInLabel).find(Boolean) ??
    unitInLabel(cell.label) ??
    ''
  const kinds = (key: (one: Candidate) => number) => {
    const groups = new Map<number, Set<string>>()
    for (const one of full) groups.set(key(one), (groups.get(key(one)) ?? new Set()).add(dimension(one)))
    return [...groups.values()].reduce((sum, set) => sum + set.size - 1, 0)
  }
  if (full.length < 3) return false
  const headed = full.filter(({ cell }) => cell.heads.some(saysField)).length
  const labelled = full.filter(({ cell }) => saysField(cell.label)).length
  if (headed !== labelled) return headed > labelled
  return kinds(({ cell }) => cell.column) < kinds(({ cell }) => cell.row)
}

const saysField = (text: string): boolean => {
  const says = conceptsIn(text)
  return (
    symbolIn(text) !== null ||
    ['voltage', 'current', 'power', 'open', 'short', 'efficiency', 'weight', 'size', 'length', 'coefficient'].some(
      (c) => says.has(c as never),
    ) ||
    unitInLabel(text) !== null
  )
}

/** A table of ratings, not the ticks of an axis: three cells or more may be one. */
const isElectrical = (cells: readonly Candidate[]) => {
  const own = cells.filter(({ fits }) => fits.some(({ field }) => ['pmax', 'voc', 'isc', 'vmp', 'imp'].includes(field)))
  const places = (key: 'row' | 'column') => new Set(own.map(({ cell }) => cell[key])).size
  return (
    own.length >= 3 && (places('row') >= 3 || (places('column') >= 3 && own.some(({ fits }) => fits[0]!.named > 1)))
  )
}

/** The condition of its column, of the heading, and last of the label. */
function conditionOf({ cell }: Candidate, rows: boolean): Condition {
  const heads = cell.heads.map(conditionIn)
  return (
    heads.find((c) => c === 'noct') ??
    heads.find(Boolean) ??
    conditionIn(cell.heading) ??
    conditionIn(rows ? (/\b(?:stc|noct|nmot)\b/i.exec(cell.label)?.[0] ?? '') : cell.label)
  )
}

/** The model of a name: the same, the only one that holds it or is held by it, or the only one of the same digits. */
export function indexOf(names: readonly string[], name: string): number {
  const bare = bareName(name)
  if (!bare) return -1
  const all = names.map(bareName)
  const same = all.indexOf(bare)
  if (same >= 0) return same
  const only = (hits: readonly number[]) => (hits.length === 1 ? hits[0]! : -1)
  const within = only(
    all.flatMap((n, i) =>
      n.endsWith(bare) || bare.endsWith(n) || n.startsWith(bare) || bare.startsWith(n) ? [i] : [],
    ),
  )
  if (within >= 0) return within
  const digits = (n: string) => n.match(/\d{2,}/g)?.join() ?? n
  return only(all.flatMap((n, i) => (digits(n) === digits(bare) ? [i] : [])))
}
