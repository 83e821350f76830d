import type { RecordKind } from '../records/field-info.ts'
import type { Checked } from '../check/checked.ts'

/** What distinguishes one record from its neighbours in a list of ids: fields, or values by their id. */
const distinguishing: Readonly<Record<RecordKind, readonly string[]>> = {
  panel: ['/stc/pmax', '/construction', 'efficiency', '/weight'],
  controller: ['/type', '/input/max_voltage', '/output/max_current'],
  battery: ['/chemistry', '/nominal_voltage', '/capacity/amount'],
  climate: ['/name', '/latitude'],
  system: ['/name', '/kind'],
  library: ['/name'],
}

/** 110 W, flexible, 17.1 %, 2.2 kg */
export function summaryOf(checked: Checked): string {
  const said = distinguishing[checked.kind].map((what) =>
    what.startsWith('/')
      ? checked.fields.get(what)?.text
      : checked.values().find(({ id, value }) => id === what && value !== null)?.text,
  )
  return said.filter((text) => text !== undefined).join(', ')
}

/** The name in the record, or its id. */
export const titleOf = ({ fields, id }: Pick<Checked, 'fields' | 'id'>) => fields.get('/name')?.text ?? id
