import { isPerCell, ofPanel } from '../quantities/per-cell.ts'
import type { Field, Measure } from '../records/field.ts'
import type { ReadFile } from '../records/read-file.ts'
import { nodeAtPointer } from '../text/tree-queries.ts'
import { certificateFor } from './certificates.ts'
import { otherText } from './compare.ts'
import { indexOf } from './models.ts'
import type { Reading, Sheet } from './sheet.ts'

/** What the sheet says to one typed field. */
export interface Witness {
  readonly field: Field<unknown>
  readonly status: 'same' | 'other' | 'not found'
  readonly reading: Reading | null
  /** What the field should read, where the sheet prints another value. */
  readonly text: string | null
}

export interface Held {
  /** The product of the sheet that the record was compared with; null where that was unclear. */
  readonly model: string | null
  readonly fields: readonly Witness[]
  /** What the sheet prints and the record lacks. */
  readonly unused: readonly Reading[]
}

/** Compares every field of a panel record that a sheet can print with what this one prints. */
export function hold(file: ReadFile<'panel'>, sheet: Sheet): Held {
  const at = modelFor(file, sheet)
  const readings = at < 0 ? shared(sheet) : sheet.models[at]!.readings
  const certificates = readings.filter(({ field }) => field.startsWith('/certificates/'))
  const typed = [...file.fields.values()].filter(({ pointer }) => knowable.test(pointer))
  const fields = [...typed.map((field) => witness(field, readings, file)), ...unread(file, readings)]
  return {
    model: at < 0 ? null : sheet.models[at]!.name,
    fields: [...asPairs(fields), ...certified(file, certificates)],
    unused: readings.filter(
      (r) =>
        !certificates.includes(r) &&
        !file.fields.has(r.field) &&
        !isOtherStep(r, file) &&
        (!isPerCell(r.typed) || file.fields.has('/cells/in_series')),
    ),
  }
}

const knowable =
  /^\/(?:stc\/|temperature_coefficients\/|noct\/|size\/|weight$|cells\/in_series$|limits\/|warranty\/(?:output\/\d+\/|workmanship\/))/

function witness(field: Field<unknown>, readings: readonly Reading[], file: ReadFile<'panel'>): Witness {
  const reading = readingFor(field, readings, file)
  const none: Witness = { field, status: 'not found', reading: null, text: null }
  if (!reading) return none
  const rating = file.fields.get(field.pointer.replace('temperature_coefficients', 'stc'))?.value
  const cells = file.fields.get('/cells/in_series')?.value
  const whole = isPerCell(reading.typed) ? { ...reading, typed: ofPanel(reading.typed, cells) ?? '' } : reading
  const other =
    'quantity' in field
      ? otherText(field as Measure, whole, typeof rating === 'number' ? rating : undefined)
      : otherNumber(field, whole)
  const text = other === whole.typed ? reading.typed : other
  if (text === undefined) return none
  return text === null ? { ...none, status: 'same', reading } : { ...none, status: 'other', reading, text }
}

/** A sheet that names no standards says nothing about them. */
function certified(file: ReadFile<'panel'>, readings: readonly Reading[]): readonly Witness[] {
  const typed = [...file.fields.values()].filter(({ pointer }) => /^\/certificates\/\d+$/.test(pointer))
  const all = typed.map(({ text }) => text)
  return typed.map((field): Witness => {
    const found = certificateFor(field.text, all, readings)
    if (!found) return { field, status: 'not found', reading: null, text: null }
    const { reading, isSame } = found
    return isSame
      ? { field, status: 'same', reading, text: null }
      : { field, status: 'other', reading, text: reading.typed }
  })
}

/** What was typed and could not be read: the sheet knows what it should be. */
const unread = (file: ReadFile<'panel'>, readings: readonly Reading[]): readonly Witness[] =>
  readings.flatMap((reading): readonly Witness[] => {
    const { field: pointer, typed: text } = reading
    const node = file.fields.has(pointer) ? null : nodeAtPointer(file.tree, pointer)
    if (node?.kind !== 'scalar' || node.text.trim() === '') return []
    return [{ field: { pointer, text: node.text, value: null, span: node.span }, status: 'other', reading, text }]
  })

const otherNumber = ({ value }: Field<unknown>, { typed }: Reading) =>
  typeof value !== 'number' ? undefined : Number(typed) === value ? null : typed

/** Steps of the output warranty are compared one by one only where the sheet has as many. */
function readingFor(
  { pointer }: Field<unknown>,
  readings: readonly Reading[],
  file: ReadFile<'panel'>,
): Reading | undefined {
  if (pointer.startsWith('/warranty/output/')) {
    const steps = (has: (p: string) => boolean) =>
      [0, 1, 2, 3, 4, 5].filter((i) => has(`/warranty/output/${i}/years`)).length
    if (steps((p) => file.fields.has(p)) !== steps((p) => readings.some((r) => r.field === p))) return undefined
  }
  return readings.find(({ field }) => field === pointer)
}

const isOtherStep = ({ field }: Reading, file: ReadFile<'panel'>) =>
  field.startsWith('/warranty/output/') && file.fields.has('/warranty/output/0/years')

/** Which side is called the length is a matter of taste: two sides in each other's place are the same. */
function asPairs(fields: readonly Witness[]): readonly Witness[] {
  const [length, width] = ['/size/length', '/size/width'].map((p) => fields.find(({ field }) => field.pointer === p))
  if (length?.status !== 'other' || width?.status !== 'other' || !length.reading || !width.reading) return fields
  const crossed = (one: Witness, other: Witness) => otherText(one.field as Measure, other.reading!) === null
  if (!crossed(length, width) || !crossed(width, length)) return fields
  return fields.map((one) =>
    one === length
      ? { ...one, status: 'same', text: null, reading: width.reading }
      : one === width
        ? { ...one, status: 'same', text: null, reading: length.reading }
        : one,
  )
}

/** By the model that the record names, else by the values that agree. */
function modelFor(file: ReadFile<'panel'>, { models }: Sheet): number {
  if (models.length === 1) return 0
  const page = file.fields.get('/datasheet/page')?.value
  const own = models.findIndex((one) => one.page !== undefined && one.page === page)
  if (own >= 0) return own
  const names = models.map(({ name }) => name)
  for (const pointer of ['/datasheet/model', '/name']) {
    const named = file.fields.get(pointer)?.value
    const at = typeof named === 'string' ? indexOf(names, named) : -1
    if (at >= 0) return at
  }
  const agree = models.map(
    ({ readings }) =>
      ratings.filter((p) => {
        const field = file.fields.get(p)
        return field && witness(field, readings, file).status === 'same'
      }).length,
  )
  const most = Math.max(...agree)
  return most >= 3 && agree.filter((n) => n === most).length === 1 ? agree.indexOf(most) : -1
}

const ratings = ['/stc/pmax', '/stc/vmp', '/stc/imp', '/stc/voc', '/stc/isc']

/** What all models of a sheet have in common. */
function shared({ models }: Sheet): readonly Reading[] {
  const [first, ...others] = models
  return (first?.readings ?? []).filter((r) =>
    others.every(({ readings }) => readings.some((o) => o.field === r.field && o.typed === r.typed)),
  )
}
