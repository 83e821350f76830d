import type { Field, Measure } from '../records/field.ts'
import { onceEach } from '../records/once-each.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { Kindred } from '../rules/about.ts'
import { pointers, type Evidence, type Reading } from '../slips/evidence.ts'
import { weightPointers } from '../slips/density/weight.ts'
import { noctPointers } from '../slips/typos/noct-row.ts'

/**
 * Of a panel what checks of others look at: short and plain, for it is kept of every panel of a library. The lists follow `textPointers`
 * and `numberPointers`, as the names of the fields would be half of a note; null stands for a field that could not be read or is not there.
 */
export interface PanelNote {
  readonly texts: readonly (NotedText | null)[]
  readonly numbers: readonly (NotedNumber | null)[]
}

type NotedText = readonly [text: string, start: number, end: number]
type NotedNumber = readonly [...NotedText, value: number, half: number, dimension?: Measure['quantity']['dimension']]

const textPointers = ['/name', '/maker', '/family', '/construction', '/cells/technology'] as const
const numberPointers = [...pointers, ...noctPointers, ...weightPointers]
/** Where each stands in its list. */
const indexOf = new Map<string, number>(
  [textPointers, numberPointers].flatMap((list) => list.map((pointer, i) => [pointer, i] as const)),
)

export function noteOf({ fields }: ReadFile<'panel'>): PanelNote {
  return {
    texts: textPointers.map((pointer) => {
      const field = fields.get(pointer)
      return field ? [field.text, field.span.start, field.span.end] : null
    }),
    numbers: numberPointers.map((pointer) => {
      const field = fields.get(pointer) as Measure | undefined
      if (!field) return null
      const { text, value, span, quantity } = field
      const noted = [text, span.start, span.end, value, quantity?.half ?? 0] as const
      return quantity ? [...noted, quantity.dimension] : noted
    }),
  }
}

/** What a panel record says of itself, as the slip search wants it. */
export const evidenceOf = onceEach(({ texts, numbers }: PanelNote): Evidence => {
  const readings: Record<string, Reading> = {}
  for (const [i, noted] of numbers.entries())
    if (noted) readings[numberPointers[i]!] = { value: noted[3], half: noted[4], text: noted[0] }
  const [name, maker, family, construction, technology] = texts.map((noted) => noted?.[0])
  return {
    ...(technology !== undefined && { technology }),
    ...(construction !== undefined && { construction }),
    ...(maker !== undefined && { maker }),
    ...(family !== undefined && { family }),
    ...(name !== undefined && { named: powersIn(name) }),
    readings,
  }
})

/** The same as rules want it. */
export const kindredOf = onceEach(({ texts, numbers }: PanelNote): Kindred => {
  const said = (pointer: (typeof textPointers)[number]): Field<string> | undefined => {
    const noted = texts[indexOf.get(pointer)!]
    return noted ? { pointer, text: noted[0], value: noted[0], span: { start: noted[1], end: noted[2] } } : undefined
  }
  const number = (pointer: string) => {
    const noted = numbers[indexOf.get(pointer)!]
    if (!noted?.[5]) return undefined
    const [text, start, end, value, , dimension] = noted
    return { pointer, text, value, span: { start, end }, quantity: { dimension } }
  }
  const [pmax, vmp, imp, voc, isc] = ['pmax', 'vmp', 'imp', 'voc', 'isc'].map((key) => number(`/stc/${key}`))
  const coefficient = (key: string) => number(`/temperature_coefficients/${key}`)
  return {
    name: said('/name'),
    maker: said('/maker'),
    family: said('/family'),
    weight: number('/weight'),
    cells: { technology: said('/cells/technology') },
    stc: { pmax, vmp, imp, voc, isc },
    temperature_coefficients: { pmax: coefficient('pmax'), voc: coefficient('voc'), isc: coefficient('isc') },
    noct: { temperature: number('/noct/temperature') },
    size: { length: number('/size/length'), width: number('/size/width') },
  }
})

/** Numbers that stand by themselves or behind capitals: `Tern 110`, `TN-110M`; the digits of a serial number are none. */
const powersIn = (name: string): readonly number[] =>
  [...name.matchAll(/(?<![\d.a-z])\d{2,3}(?![\d.a-vx-z])/g)].map(([digits]) => Number(digits))
