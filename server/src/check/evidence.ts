import type { Measure } from '../records/field.ts'
import type { ReadFile } from '../records/read-file.ts'
import { pointers, type Evidence, type Reading } from '../slips/evidence.ts'
import { weightPointers } from '../slips/density/weight.ts'
import { noctPointers } from '../slips/typos/noct-row.ts'

/** What a panel record says of itself, as the slip search wants it. Fields that could not be read are absent. */
export function evidenceOf({ record, fields }: ReadFile<'panel'>): Evidence {
  const readings: Record<string, Reading> = {}
  for (const pointer of [...pointers, ...noctPointers, ...weightPointers]) {
    const field = fields.get(pointer) as Measure | undefined
    if (field) readings[pointer] = { value: field.value, half: field.quantity?.half ?? 0, text: field.text }
  }
  const { technology } = record.cells
  const { construction, maker, family, name } = record
  return {
    ...(technology && { technology: technology.value }),
    ...(construction && { construction: construction.value }),
    ...(maker && { maker: maker.value }),
    ...(family && { family: family.value }),
    ...(name && { named: powersIn(name.text) }),
    readings,
  }
}

/** Numbers that stand by themselves or behind capitals: `Tern 110`, `TN-110M`; the digits of a serial number are none. */
const powersIn = (name: string): readonly number[] =>
  [...name.matchAll(/(?<![\d.a-z])\d{2,3}(?![\d.a-vx-z])/g)].map(([digits]) => Number(digits))
