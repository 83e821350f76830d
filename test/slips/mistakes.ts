import { randomFrom } from './random.ts'
import { printed, type Row, type Texts } from './rows.ts'

export const kinds = [
  'digits swapped',
  'digit dropped',
  'digit doubled',
  'neighbouring key',
  'point dropped',
  'point moved',
  'voltages swapped',
  'currents swapped',
  'coefficients swapped',
  'sign lost',
  'length unit',
  'cell count',
  'module coefficient as percent',
  'row of NOCT',
  'milliamperes',
  'fraction as percent',
  'column beside',
] as const

/** Kinds that the model does not know, which show what it does with mistakes that nobody foresaw. */
export const unforeseen = [
  'another digit hit as well',
  'digit held down',
  'two keys missed',
  'digit misread',
  'digits rotated',
  'value of the line above',
  'inches as millimetres',
  'NOCT in Fahrenheit',
  'coefficient per Fahrenheit',
  'voltage of the NOCT row',
  'voltage of two in series',
  'efficiency of the cells',
] as const

export interface Made {
  readonly row: Row
  readonly texts: Texts
  readonly pointers: readonly string[]
}

/** Records with one mistake of a kind, the same for the same seed; changes under 3 % of a value are not made. */
export function mistakes(rows: readonly Row[], slip: string, count: number, seed: number): Made[] {
  const random = randomFrom(seed)
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!
  const made: Made[] = []
  for (let tries = 0; made.length < count && tries < 40 * count; tries++) {
    const row = pick(rows)
    const texts = printed(row)
    const changes = changed(slip, row, texts, { rows, pick })
    const real = changes && Object.entries(changes).every(([p, t]) => t !== texts[p] && !small(t, texts[p]!))
    if (real) made.push({ row, texts: { ...texts, ...changes }, pointers: Object.keys(changes) })
  }
  return made
}

const small = (typed: string, was: string) =>
  typed.split(' ')[1] === was.split(' ')[1] && Math.abs(parseFloat(typed) / parseFloat(was) - 1) < 0.03

const beside: Readonly<Record<string, string>> = {
  0: '9',
  1: '2',
  2: '13',
  3: '24',
  4: '35',
  5: '46',
  6: '57',
  7: '68',
  8: '79',
  9: '80',
}

type Pick = <T>(list: readonly T[]) => T

function changed(
  slip: string,
  row: Row,
  texts: Texts,
  { rows, pick }: { rows: readonly Row[]; pick: Pick },
): Texts | null {
  const swap = (a: string, b: string) => (texts[a] && texts[b] ? { [a]: texts[b], [b]: texts[a] } : null)
  const [gamma, beta] = ['/temperature_coefficients/pmax', '/temperature_coefficients/voc']
  switch (slip) {
    case 'voltages swapped':
      return swap('/stc/voc', '/stc/vmp')
    case 'currents swapped':
      return swap('/stc/isc', '/stc/imp')
    case 'coefficients swapped':
      return swap(gamma, beta)
    case 'sign lost': {
      const pointer = pick([gamma, beta])
      return texts[pointer] ? { [pointer]: texts[pointer].replace('-', '') } : null
    }
    case 'length unit': {
      const pointer = pick(['/size/length', '/size/width'])
      return { [pointer]: texts[pointer]!.replace('mm', pick(['cm', 'in', 'm'])) }
    }
    case 'cell count':
      return texts['/cells/in_series'] ? { '/cells/in_series': pick(['36', '48', '54', '60', '66', '72', '96']) } : null
    case 'module coefficient as percent':
      return typeof row['beta_voc_v_per_c'] === 'number'
        ? { [beta]: `${row['beta_voc_v_per_c'].toFixed(3)} %/°C` }
        : null
    case 'row of NOCT': {
      const [pointer, share, decimals] = pick([
        ['/stc/pmax', 0.74, 0],
        ['/stc/imp', 0.8, 2],
        ['/stc/isc', 0.81, 2],
      ] as const)
      const [number, unit] = texts[pointer]!.split(' ')
      return { [pointer]: `${(Number(number) * share).toFixed(decimals)} ${unit}` }
    }
    case 'milliamperes': {
      const pointer = pick(['/stc/imp', '/stc/isc'])
      return { [pointer]: `${Math.round(1000 * parseFloat(texts[pointer]!))} A` }
    }
    case 'fraction as percent': {
      const pointer = pick([gamma, beta, '/stc/efficiency'].filter((one) => texts[one]))
      const [number, unit] = texts[pointer]!.split(' ')
      return { [pointer]: `${Number((Number(number) / 100).toPrecision(4))} ${unit}` }
    }
    case 'column beside': {
      const pmax = row['pmax_w'] as number
      const others = rows.filter((one) => {
        const off = Math.abs((one['pmax_w'] as number) / pmax - 1)
        return one !== row && row['family'] && one['family'] === row['family'] && off < 0.12
      })
      if (others.length === 0) return null
      const pointer = pick(['/stc/pmax', '/stc/vmp', '/stc/imp', '/stc/voc', '/stc/isc'])
      return { [pointer]: printed(pick(others))[pointer]! }
    }
    case 'value of the line above': {
      const lines = ['/stc/pmax', '/stc/vmp', '/stc/imp', '/stc/voc', '/stc/isc']
      const i = pick([1, 2, 3, 4])
      const above = texts[lines[i - 1]!]!.split(' ')[0]!
      return { [lines[i]!]: `${above} ${texts[lines[i]!]!.split(' ')[1]}` }
    }
    case 'inches as millimetres':
      return scaled(texts, pick(['/size/length', '/size/width']), 1 / 25.4, 1)
    case 'NOCT in Fahrenheit': {
      const noct = texts['/noct/temperature']
      return noct ? { '/noct/temperature': `${Math.round(parseFloat(noct) * 1.8 + 32)} °C` } : null
    }
    case 'coefficient per Fahrenheit':
      return scaled(texts, pick([gamma, beta]), 5 / 9, 2)
    case 'voltage of the NOCT row':
      // what sheets of silicon print for 800 W/m2 (common practice, no source)
      return scaled(texts, pick(['/stc/vmp', '/stc/voc']), 0.93, 1)
    case 'voltage of two in series':
      return scaled(texts, pick(['/stc/vmp', '/stc/voc']), 2, 1)
    case 'efficiency of the cells':
      return scaled(texts, '/stc/efficiency', 1.12, 1)
    default: {
      const pointer = pick(Object.keys(texts).filter((p) => !p.startsWith('/cells')))
      const [number, unit] = texts[pointer]!.split(' ')
      const other = typo(slip, number!, pick)
      return other === null ? null : { [pointer]: `${other} ${unit}` }
    }
  }
}

function scaled(texts: Texts, pointer: string, factor: number, decimals: number): Texts | null {
  const [number, unit] = texts[pointer]?.split(' ') ?? []
  return number ? { [pointer]: `${(Number(number) * factor).toFixed(decimals)} ${unit}` } : null
}

/** Digits that look alike, in print or by hand (common practice, no source). */
const lookAlike: Readonly<Record<string, string>> = {
  0: '68',
  1: '74',
  2: '7',
  3: '8',
  4: '19',
  5: '38',
  6: '08',
  7: '12',
  8: '036',
  9: '4',
}

function typo(slip: string, text: string, pick: Pick): string | null {
  const digits = [...text].flatMap((c, i) => (/\d/.test(c) ? [i] : []))
  const put = (i: number, count: number, what: string) => text.slice(0, i) + what + text.slice(i + count)
  const i = pick(digits)
  switch (slip) {
    case 'digits swapped':
      return /\d/.test(text[i + 1] ?? '') ? put(i, 2, text[i + 1]! + text[i]!) : null
    case 'digit dropped':
      return digits.length < 3 ? null : put(i, 1, '').replace(/^(-?)\./, '$10.')
    case 'digit doubled':
      return put(i, 1, text[i]! + text[i]!)
    case 'neighbouring key':
      return put(i, 1, pick([...beside[text[i]!]!]))
    case 'point dropped':
      return text.includes('.') ? text.replace('.', '').replace(/^(-?)0+(?=\d)/, '$1') : null
    case 'point moved':
      return text.includes('.') ? String(Number((Number(text) * pick([10, 0.1])).toPrecision(6))) : null
    case 'another digit hit as well':
      return put(i, 1, text[i]! + pick([...beside[text[i]!]!]))
    case 'digit held down':
      return put(i, 1, text[i]!.repeat(3))
    case 'two keys missed': {
      const j = digits[digits.indexOf(i) + 1]
      if (j === undefined) return null
      const first = put(i, 1, pick([...beside[text[i]!]!]))
      return first.slice(0, j) + pick([...beside[text[j]!]!]) + first.slice(j + 1)
    }
    case 'digit misread':
      return put(i, 1, pick([...lookAlike[text[i]!]!]))
    case 'digits rotated': {
      const [a, b, c] = digits.slice(digits.indexOf(i))
      if (a === undefined || b === undefined || c === undefined) return null
      const out = [...text]
      ;[out[a], out[b], out[c]] = [text[b]!, text[c]!, text[a]!]
      return out.join('').replace(/^(-?)0(?=\d)/, '$1')
    }
    default:
      throw new Error(`no such slip: ${slip}`)
  }
}
