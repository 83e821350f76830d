import { reviewRule } from '../rule.ts'
import type { Field } from '../../records/field.ts'

export const idTwice = reviewRule({
  id: 'id-twice',
  severity: 'error',
  reason:
    'Panels, controllers and measurements go by the id of a surface or of an array, so that each needs one of its own.',
  source: 'the surfaces and arrays of the system',
  messages: {
    surface: 'Two surfaces have the id {id}: panels on {id} count as lying on the first',
    array: 'Two arrays have the id {id}: whatever names {id} means the first',
  },

  check({ system: { surfaces, arrays } }) {
    return [
      ...laterOnes(surfaces).map((same) => ({ say: 'surface' as const, with: { id: same[0] }, suspects: same })),
      ...laterOnes(arrays).map((same) => ({ say: 'array' as const, with: { id: same[0] }, suspects: same })),
    ]
  },
})

/** Each id that was there before, with the first of its kind. */
function laterOnes(
  named: readonly { readonly id?: Field<string> }[],
): readonly (readonly [Field<string>, Field<string>])[] {
  const ids = named.flatMap(({ id }) => id ?? [])
  return ids.flatMap((id) => {
    const first = ids.find(({ value }) => value === id.value)!
    return first === id ? [] : [[id, first] as const]
  })
}
