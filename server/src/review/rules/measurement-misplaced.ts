import { nameOf } from '../measured/in-words.ts'
import { nearest } from '../../records/nearest.ts'
import { stringsOf } from '../strings.ts'
import type { Field } from '../../records/field.ts'
import type { ResolvedArray, ResolvedMeasurement } from '../resolved.ts'
import { reviewRule } from '../rule.ts'

export const measurementMisplaced = reviewRule({
  id: 'measurement-misplaced',
  severity: 'error',
  reason: 'What was measured on an array or a string that is not there is compared with nothing.',
  source: 'the arrays of the system and their wiring',
  messages: {
    noArray: 'No array of this system is called {id}{others}',
    others: '; there are {names}',
    onlyOne: '; there is {names}',
    which: 'The array is not named, and there are {names}',
    noString: '{array} has {count} strings; there is no string {number}',
    oneString: '{array} has one string; there is no string {number}',
    twice: 'String {number} of {array} is in this list twice',
    why: 'the nearest array',
  },

  check(system) {
    const names = system.arrays.flatMap(({ entry: { id } }) => id?.text ?? [])
    const nowhere = system.measurements.filter(({ array }) => !array)
    return [
      ...nowhere.flatMap(({ entry: { array } }) => (array ? [unknown(array, names)] : [])),
      ...nowhere.flatMap(({ entry: { array, date } }) => (array || !date ? [] : [unnamed(date, names)])),
      ...system.measurements.flatMap((one) => (one.array ? stringsMisplaced(one.array, one) : [])),
    ]
  },
})

const unnamed = (date: Field<string>, names: readonly string[]) => ({
  say: 'which' as const,
  with: { names: { list: names, last: 'and' as const } },
  suspects: [date] as const,
})

function unknown(array: Field<string>, names: readonly string[]) {
  const near = nearest(array.value, names)
  const others = {
    say: names.length > 1 ? 'others' : 'onlyOne',
    with: { names: { list: names, last: 'and' as const } },
  }
  const correction = near ? { field: array, text: near, why: { say: 'why' }, certainty: 'guess' as const } : undefined
  return {
    say: 'noArray' as const,
    with: { id: array, others: names.length > 0 ? others : null },
    suspects: [array] as const,
    correction,
  }
}

function stringsMisplaced(array: ResolvedArray, { entry: { strings } }: ResolvedMeasurement) {
  const count = stringsOf(array).length
  return strings.flatMap(({ string }, i) => {
    if (!string) return []
    const isTwice = strings.slice(0, i).some((other) => other.string?.value === string.value)
    if (!isTwice && (string.value <= count || count === 0)) return []
    const say = isTwice ? ('twice' as const) : count === 1 ? ('oneString' as const) : ('noString' as const)
    return [{ say, with: { array: nameOf(array), number: string, count }, suspects: [string] as const }]
  })
}
