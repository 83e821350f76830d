import { createHash } from 'node:crypto'

/** A row of the open ratings, with the technology as a record names it. */
export type Row = Readonly<Record<string, number | string | null>> & { readonly sort: string }
export type Texts = Record<string, string>

const sorts: Readonly<Record<string, string>> = {
  'Mono-c-Si': 'mono',
  'HIT-Si': 'hjt',
  'Multi-c-Si': 'poly',
  CIGS: 'cigs',
  CIS: 'cigs',
  CdTe: 'cdte',
  '1-a-Si': 'a-si',
  '2-a-Si': 'a-si',
  '3-a-Si': 'a-si',
  'a-Si/nc': 'a-si',
}

/** Two halves that share no product family and no set of ratings. */
export function halves(rows: readonly Record<string, number | string | null>[]): [Row[], Row[]] {
  const parent = new Map<string, string>()
  const root = (key: string): string => {
    const above = parent.get(key) ?? key
    return above === key ? key : root(above)
  }
  const keys = rows.map((r) => {
    const ratings = [r['voc_v'], r['isc_a'], r['vmp_v'], r['imp_a']].map((v) => Number(v).toFixed(1)).join()
    return [String(r['family'] ?? r['id']), ratings] as const
  })
  for (const [family, ratings] of keys) parent.set(root(family), root(ratings))
  const sides: [Row[], Row[]] = [[], []]
  rows.forEach((r, i) => {
    const side = createHash('md5').update(root(keys[i]![0])).digest()[0]! & 1
    sides[side]!.push({ ...r, sort: sorts[String(r['technology'])] ?? 'thin-film' })
  })
  return sides
}

/** A row as a datasheet prints it. Sides that the list lacks are made from its area, and the efficiency where the row has no word on it. */
export function printed(row: Row): Texts {
  const n = (key: string) => row[key] as number
  const volts = (v: number) => v.toFixed(2).replace(/0$/, '')
  const length = Math.round(n('length_mm') || Math.sqrt(n('area_m2') * 1.65) * 1000)
  const width = Math.round(n('width_mm') || (n('area_m2') * 1e6) / length)
  const power = row['pmax_is'] === 'product' ? n('pmax_w').toFixed(1) : String(n('pmax_w'))
  const texts: Texts = {
    '/stc/pmax': `${power} W`,
    '/stc/vmp': `${volts(n('vmp_v'))} V`,
    '/stc/imp': `${n('imp_a').toFixed(2)} A`,
    '/stc/voc': `${volts(n('voc_v'))} V`,
    '/stc/isc': `${n('isc_a').toFixed(2)} A`,
    '/size/length': `${length} mm`,
    '/size/width': `${width} mm`,
  }
  const efficiency = row['efficiency_pct'] === undefined ? (1e5 * n('pmax_w')) / (length * width) : n('efficiency_pct')
  if (efficiency) texts['/stc/efficiency'] = `${efficiency.toFixed(1)} %`
  if (n('gamma_pmp_pct_per_c')) texts['/temperature_coefficients/pmax'] = `${n('gamma_pmp_pct_per_c').toFixed(2)} %/°C`
  if (n('beta_voc_pct_per_c')) texts['/temperature_coefficients/voc'] = `${n('beta_voc_pct_per_c').toFixed(2)} %/°C`
  if (n('alpha_isc_pct_per_c')) texts['/temperature_coefficients/isc'] = `${n('alpha_isc_pct_per_c').toFixed(3)} %/°C`
  if (n('noct_c')) texts['/noct/temperature'] = `${Math.round(n('noct_c'))} °C`
  if (n('imp_noct_a') && n('vmp_noct_v')) {
    texts['/noct/pmax'] = `${(n('imp_noct_a') * n('vmp_noct_v')).toFixed(1)} W`
    texts['/noct/vmp'] = `${volts(n('vmp_noct_v'))} V`
    texts['/noct/imp'] = `${n('imp_noct_a').toFixed(2)} A`
  }
  if (n('cells_in_series')) texts['/cells/in_series'] = String(n('cells_in_series'))
  return texts
}

/** A record with such texts, as a person types it. */
export function yamlOf(row: Row, texts: Texts): string {
  const blocks = new Map<string, string[]>()
  const { surface, thickness_mm: thickness, weight_kg: weight } = row
  const all = {
    ...(surface && { '/surface': String(surface) }),
    ...texts,
    ...(thickness && !texts['/size/thickness'] && { '/size/thickness': `${thickness} mm` }),
    ...(weight && !texts['/weight'] && { '/weight': `${weight} kg` }),
  }
  for (const [pointer, text] of Object.entries(all)) {
    const [, block, field] = pointer.split('/')
    blocks.set(block!, [...(blocks.get(block!) ?? []), field ? `  ${field}: ${text}` : ` ${text}`])
  }
  blocks.set('cells', [`  technology: ${row.sort}`, ...(blocks.get('cells') ?? [])])
  const lines = [...blocks].flatMap(([block, fields]) =>
    fields[0]!.startsWith('  ') ? [`${block}:`, ...fields] : [`${block}:${fields[0]}`],
  )
  return [
    'format: 1',
    `name: ${String(row['id'])}`,
    `construction: ${row['construction'] ?? 'rigid'}`,
    ...lines,
    '',
  ].join('\n')
}
