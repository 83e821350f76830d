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

/** The sheet to take along: cautions on top, what each string should show, and boxes for what it shows. */
export function formLeaves({ name, cautions, arrays }: FormData, written: Written, stamp: Stamp): readonly Leaf[] {
  return [
    {
      title: `To be measured: ${name}`,
      subtitle: `expected values of ${stamp.date} · ${stamp.revision ?? 'records without a revision'}`,
      sections: [
        ...section('Cautions', { type: 'list', items: cautions, columns: 2 }),
        ...section('On the day', { type: 'table', table: dayTable }),
        ...arrays.flatMap((array) => ofArray(array, written)),
      ],
    },
  ]
}

const box = '\u2610'

const dayTable: Table = {
  form: 'boxes',
  name: 'Of the day',
  head: ['date', 'by', 'meter', 'irradiance meter or reference panel', 'air', 'sky'],
  figures: [],
  rows: [Array<string>(6).fill('\u00a0')],
}

/** Room for a hand. */
const blank = '\u00a0'

function ofArray({ id, strings }: FormArray, written: Written): readonly Section[] {
  return [
    ...section(`${id}: Voc expected, in V`, {
      type: 'table',
      table: expectedTable(`Voc of ${id}`, strings, 'voc', written),
    }),
    ...section(`${id}: Isc expected, in A`, {
      type: 'table',
      table: expectedTable(`Isc of ${id}`, strings, 'isc', written),
    }),
    ...section(`${id}: measured`, { type: 'table', table: boxes(id, strings) }),
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
): Table {
  const columns = formIrradiances.flatMap((irradiance) =>
    formTemperatures.map((temperature) => `${irradiance} W/m2, ${celsius(temperature)}`),
  )
  return {
    form: 'expected',
    name,
    head: ['string', 'panels', ...columns],
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

const boxes = (id: string, strings: readonly FormString[]): Table => ({
  form: 'boxes',
  name: `Measured on ${id}`,
  head: ['string', 'time', 'W/m2', 'cells, °C', 'polarity', 'Voc', 'Isc', 'Vmp', 'Imp', 'seen'],
  figures: [],
  rows: strings.map(({ number }) => [
    String(number),
    blank,
    blank,
    blank,
    `${box} as marked`,
    ...Array<string>(5).fill(blank),
  ]),
})
