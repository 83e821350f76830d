import {
  formIrradiances,
  formTemperatures,
  type FormArray,
  type FormData,
  type FormString,
} from '../../review/page/form-data.ts'
import type { Written } from '../units.ts'
import { section, type Leaf, type Section, type Table } from './blocks.ts'
import type { Stamp } from './leaves.ts'
import type { Bundle } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'

/** The sheet to take along: cautions on top, what each string should show, and boxes for what it shows. */
export function formLeaves(
  { name, cautions, arrays }: FormData,
  written: Written,
  stamp: Stamp,
  bundle?: Bundle,
): readonly Leaf[] {
  const say = sayIn(bundle)
  return [
    {
      title: say`To be measured: ${name}`,
      subtitle: `${say`expected values of ${stamp.date}`} · ${stamp.revision ?? say`records without a revision`}`,
      sections: [
        ...section(say`Cautions`, { type: 'list', items: cautions, columns: 2 }),
        ...section(say`On the day`, { type: 'table', table: dayTable(say) }),
        ...arrays.flatMap((array) => ofArray(array, written, say)),
      ],
    },
  ]
}

const box = '\u2610'

type Say = ReturnType<typeof sayIn>

const dayTable = (say: Say): Table => ({
  form: 'boxes',
  name: say`Of the day`,
  head: [say`date`, say`by`, say`meter`, say`irradiance meter or reference panel`, say`air`, say`sky`],
  figures: [],
  rows: [Array<string>(6).fill('\u00a0')],
})

/** Room for a hand. */
const blank = '\u00a0'

function ofArray({ id, strings }: FormArray, written: Written, say: Say): readonly Section[] {
  return [
    ...section(say`${id}: Voc expected, in V`, {
      type: 'table',
      table: expectedTable(say`Voc of ${id}`, strings, 'voc', written, say),
    }),
    ...section(say`${id}: Isc expected, in A`, {
      type: 'table',
      table: expectedTable(say`Isc of ${id}`, strings, 'isc', written, say),
    }),
    ...section(say`${id}: measured`, { type: 'table', table: boxes(id, strings, say) }),
  ]
}

/** As meters show them. */
const decimals = { voc: 1, isc: 2 } as const

/** One row a string, one column for each sun and each warmth of the cells. */
function expectedTable(
  name: string,
  strings: readonly FormString[],
  quantity: 'voc' | 'isc',
  { celsius }: Written,
  say: Say,
): Table {
  const columns = formIrradiances.flatMap((irradiance) =>
    formTemperatures.map((temperature) => `${irradiance} W/m2, ${celsius(temperature)}`),
  )
  return {
    form: 'expected',
    name,
    head: [say`string`, say`panels`, ...columns],
    figures: columns.map((_, i) => i + 2),
    rows: strings.map(({ number, panels, expected }) => [
      String(number),
      panels,
      ...expected.map((one) => {
        const value = one[quantity]
        return value === null ? '?' : value.toFixed(decimals[quantity])
      }),
    ]),
  }
}

const boxes = (id: string, strings: readonly FormString[], say: Say): Table => ({
  form: 'boxes',
  name: say`Measured on ${id}`,
  head: [say`string`, say`time`, 'W/m2', say`cells, °C`, say`polarity`, 'Voc', 'Isc', 'Vmp', 'Imp', say`seen`],
  figures: [],
  rows: strings.map(({ number }) => [
    String(number),
    blank,
    blank,
    blank,
    `${box} ${say`as marked`}`,
    ...Array<string>(5).fill(blank),
  ]),
})
