import { drawn, randomFrom } from './random.ts'
import { printed, type Row, type Texts } from './rows.ts'
import type { Made } from './mistakes.ts'

type Draw = ReturnType<typeof drawn>
type Change = (texts: Texts, row: Row, draw: Draw) => Texts | null

const [gamma, beta, alpha] = ['pmax', 'voc', 'isc'].map((name) => `/temperature_coefficients/${name}`) as [
  string,
  string,
  string,
]
const [length, width] = ['/size/length', '/size/width'] as const
const stc = ['pmax', 'vmp', 'imp', 'voc', 'isc'].map((name) => `/stc/${name}`)

const parts = (text: string): [number: string, unit: string] => {
  const [number = '', ...unit] = text.split(' ')
  return [number, unit.join(' ')]
}
const isOther = (pointer: string) => pointer.startsWith('/cells') || pointer.startsWith('/datasheet')
const decimals = (number: string) => number.split('.')[1]?.length ?? 0

/** The same decimals, another number. */
function times(texts: Texts, factors: Readonly<Record<string, number>>): Texts | null {
  const changed: Texts = {}
  for (const [pointer, factor] of Object.entries(factors)) {
    if (!texts[pointer]) return null
    const [number, unit] = parts(texts[pointer])
    changed[pointer] = `${(Number(number) * factor).toFixed(decimals(number))} ${unit}`
  }
  return changed
}

/** Millimetres of both sides in a unit, typed with another behind them. */
const sidesAs =
  (meant: 'mm' | 'cm' | 'm' | 'in', typed: string): Change =>
  (texts) =>
    Object.fromEntries(
      [length, width].map((side) => {
        const mm = Number(parts(texts[side]!)[0])
        const number = {
          mm: mm.toFixed(0),
          cm: (mm / 10).toFixed(1),
          m: (mm / 1000).toFixed(3),
          in: (mm / 25.4).toFixed(1),
        }[meant]
        return [side, `${number} ${typed}`]
      }),
    )

/** The column of NOCT as that of STC. */
const noctColumn = (texts: Texts): Texts | null =>
  texts['/noct/voc']
    ? Object.fromEntries(stc.map((pointer) => [pointer, texts[pointer.replace('stc', 'noct')]!]))
    : null

/** With Voc and Isc at NOCT, which the open ratings lack, where they have the rest of that column. */
function wholeNoct(texts: Texts): Texts {
  const hot = Number.parseFloat(texts['/noct/temperature'] ?? '') - 25
  if (!texts['/noct/pmax'] || Number.isNaN(hot)) return texts
  const at = times(texts, { '/stc/voc': 1 - 0.003 * hot - 0.0094, '/stc/isc': 0.8 * (1 + 0.0005 * hot) })!
  return { ...texts, '/noct/voc': at['/stc/voc']!, '/noct/isc': at['/stc/isc']! }
}

/** A letter in place of a digit, somewhere in a number. */
const misread =
  (digit: string, letter: string): Change =>
  (texts, _row, { pick }) => {
    const with_ = Object.keys(texts).filter((p) => !isOther(p) && parts(texts[p]!)[0].includes(digit))
    if (with_.length === 0) return null
    const pointer = pick(with_)
    const [number, unit] = parts(texts[pointer]!)
    const places = [...number].flatMap((c, i) => (c === digit ? [i] : []))
    const i = pick(places)
    return { [pointer]: `${number.slice(0, i)}${letter}${number.slice(i + 1)} ${unit}` }
  }

const inNumber =
  (change: (number: string, draw: Draw) => string | null): Change =>
  (texts, _row, draw) => {
    const pointer = draw.pick(Object.keys(texts).filter((p) => !isOther(p)))
    const [number, unit] = parts(texts[pointer]!)
    const other = change(number, draw)
    return other === null ? null : { [pointer]: `${other} ${unit}` }
  }

const mass = (row: Row) => Number(row['weight_kg'])
const weight =
  (typed: (kg: number) => string): Change =>
  (_texts, row) =>
    row['weight_kg'] ? { '/weight': typed(mass(row)) } : null

/** Mistakes that no kind of slip was made for one by one: of several fields, of reading, of units. */
export const unplanned: Readonly<Record<string, Change>> = {
  'sides: cm typed as mm': sidesAs('cm', 'mm'),
  'sides: m typed as mm': sidesAs('m', 'mm'),
  'sides: in typed as mm': sidesAs('in', 'mm'),
  'sides: mm typed as cm': sidesAs('mm', 'cm'),
  'sides: mm typed as in': sidesAs('mm', 'in'),
  'NOCT column typed as STC': noctColumn,
  'columns exchanged': (texts) => {
    const at = noctColumn(texts)
    return at && { ...at, ...Object.fromEntries(stc.map((one) => [one.replace('stc', 'noct'), texts[one]!])) }
  },
  'ratings one row up': (texts) =>
    Object.fromEntries(
      stc.map((pointer, i) => [pointer, `${parts(texts[stc[(i + 1) % 5]!]!)[0]} ${parts(texts[pointer]!)[1]}`]),
    ),
  'rear-gain column': (texts) => times(texts, { '/stc/pmax': 1.1, '/stc/imp': 1.1, '/stc/isc': 1.1 }),
  'the 24 V version': (texts) => times(texts, { '/stc/vmp': 2, '/stc/imp': 0.5, '/stc/voc': 2, '/stc/isc': 0.5 }),
  'pair in series': (texts) => times(texts, { '/stc/pmax': 2, '/stc/vmp': 2, '/stc/voc': 2 }),
  'pair in parallel': (texts) => times(texts, { '/stc/pmax': 2, '/stc/imp': 2, '/stc/isc': 2 }),
  'coefficients per °F': (texts) => {
    const all = [gamma, beta, alpha].filter((p) => texts[p])
    return all.length < 2 ? null : times(texts, Object.fromEntries(all.map((p) => [p, 1 / 1.8])))
  },
  'Voc coefficient per cell': (texts) => {
    const cells = Number(texts['/cells/in_series'])
    if (!texts[beta] || !cells) return null
    const mv = (10 * Number(parts(texts[beta])[0]) * Number(parts(texts['/stc/voc']!)[0])) / cells
    return { [beta]: `${mv.toFixed(2)} mV/°C` }
  },
  'Vmp and Imp exchanged': (texts) => {
    const [vmp, imp] = [parts(texts['/stc/vmp']!), parts(texts['/stc/imp']!)]
    return { '/stc/vmp': `${imp[0]} V`, '/stc/imp': `${vmp[0]} A` }
  },
  'column of voltages at NOCT': (texts) => times(texts, { '/stc/vmp': 0.93, '/stc/voc': 0.93 }),
  'currents of two modules': (texts) => times(texts, { '/stc/imp': 2, '/stc/isc': 2 }),
  'S for 5': misread('5', 'S'),
  'B for 8': misread('8', 'B'),
  'I for 1': misread('1', 'I'),
  'l for 1': misread('1', 'l'),
  'O for 0': misread('0', 'O'),
  'G for 6': misread('6', 'G'),
  'Z for 2': misread('2', 'Z'),
  'footnote joined': inNumber((number, { pick }) => number + pick(['1', '2', '3'])),
  'raised footnote': inNumber((number, { pick }) => number + pick(['¹', '²', '³'])),
  'middle dot': inNumber((number) => (number.includes('.') ? number.replace('.', '·') : null)),
  'space for the point': inNumber((number) => (number.includes('.') ? number.replace('.', ' ') : null)),
  'space in the number': inNumber((number, { pick }) => {
    const body = number.replace('-', '')
    return /^\d\d/.test(body) ? number.replace(/^(-?\d)/, '$1 ') : pick([null])
  }),
  'NOCT in °F without saying so': (texts) => {
    const noct = texts['/noct/temperature']
    return noct ? { '/noct/temperature': `${Math.round(Number.parseFloat(noct) * 1.8 + 32)} °C` } : null
  },
  'NOCT said to be in °F': (texts) => {
    const noct = texts['/noct/temperature']
    return noct ? { '/noct/temperature': noct.replace('°C', '°F') } : null
  },
  'g typed as kg': weight((kg) => `${Math.round(1000 * kg)} kg`),
  'kg typed as g': weight((kg) => `${kg} g`),
  'lb typed as kg': weight((kg) => `${(kg / 0.45359237).toFixed(1)} kg`),
  'kg typed as lb': weight((kg) => `${kg} lb`),
  'oz typed as kg': weight((kg) => `${(kg / 0.028349523).toFixed(1)} kg`),
  'oz typed as g': weight((kg) => `${(kg / 0.028349523).toFixed(0)} g`),
  'day and month exchanged': () => ({ '/datasheet/typed_on': '2026-11-02' }),
  'efficiency of another panel': (texts) => times(texts, { '/stc/efficiency': 0.86 }),
  'thickness as width': (_texts, row) => (row['thickness_mm'] ? { [width]: `${row['thickness_mm']} mm` } : null),
}

/** Records with one mistake of an unplanned kind, each with what it should read, the same for the same seed. */
export function unplannedOf(
  rows: readonly Row[],
  kind: string,
  count: number,
  seed: number,
): (Made & { readonly clean: Texts })[] {
  const draw = drawn(randomFrom(seed))
  const made: (Made & { readonly clean: Texts })[] = []
  for (let tries = 0; made.length < count && tries < 40 * count; tries++) {
    const row = draw.pick(rows)
    const clean = { ...wholeNoct(printed(row)), '/datasheet/typed_on': '2026-02-11' }
    const changes = unplanned[kind]!(clean, row, draw)
    const pointers = Object.keys(changes ?? {}).filter((pointer) => changes![pointer] !== clean[pointer as never])
    if (pointers.length > 0) made.push({ row, clean, texts: { ...clean, ...changes }, pointers })
  }
  return made
}
