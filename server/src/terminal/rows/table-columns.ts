import { readQuantity } from '../../quantities/read.ts'
import type { Quantity } from '../../quantities/quantity.ts'
import type { RecordKind } from '../../records/field-info.ts'
import type { Measure } from '../../records/field.ts'
import { infoAt } from '../../records/info-at.ts'
import type { ReadFile } from '../../records/read-file.ts'
import { schemas } from '../../records/schemas.generated.ts'
import { dotted } from '../../rows/cells.ts'
import { typedPointers } from '../../rows/typed-pointers.ts'
import type { Column, Measured } from '../../rows/cell.ts'
import { inCatalogue } from '../../wording/phrase.ts'

/** One record with what it types, by pointer. */
export interface TypedRow {
  readonly file: ReadFile
  /** As a person would name it. */
  readonly path: string
  readonly cells: ReadonlyMap<string, string>
}

/**
 * The file, then every field of the kinds of record that there are, in the order of the schemas, and what records type beside them.
 *
 * @returns  all columns, and of them those that any record fills
 */
export function typedColumns(rows: readonly TypedRow[]) {
  const kinds = [...new Set(rows.map(({ file }) => file.kind))]
  const { all, filled } = typedPointers(rows.map(({ file: { kind }, cells }) => ({ kind, cells })))
  const columns = new Map(all.map((pointer) => [pointer, typedColumn(pointer, kinds)]))
  return { all: [file, ...columns.values()], filled: [file, ...filled.map((pointer) => columns.get(pointer)!)] }
}

const file: Column<TypedRow> = {
  key: 'file',
  label: inCatalogue`file`,
  cell: ({ path }) => ({ value: path, text: path }),
}

function typedColumn(pointer: string, kinds: readonly RecordKind[]): Column<TypedRow> {
  const infos = kinds.map((kind) => infoAt(schemas[kind]!, pointer))
  const info = infos.find((one) => one !== null)
  const key = dotted(pointer)
  return {
    key,
    label: key,
    cell: ({ cells }) => {
      const text = cells.get(pointer)
      return text === undefined ? { value: null, text: '' } : { value: text, text }
    },
    ...(info?.type === 'quantity' && {
      measure: {
        of: ({ file: { fields } }) => measured((fields.get(pointer) as Measure | undefined)?.quantity),
        read: (text) => measured(readQuantity(text, info.quantity!, info.unit ? { unit: info.unit } : {}).quantity),
      },
    }),
    ...((info?.type === 'number' || info?.type === 'integer') && {
      measure: {
        of: ({ cells }) => number(cells.get(pointer)),
        read: number,
      },
    }),
  }
}

const measured = (quantity: Quantity | undefined): Measured | null =>
  quantity ? { value: quantity.value, unit: quantity.dimension === 'money' ? quantity.unit : quantity.dimension } : null

const number = (text: string | undefined): Measured | null =>
  text === undefined || text.trim() === '' || Number.isNaN(Number(text)) ? null : { value: Number(text) }
