// The terms of the score of records with one mistake, kept so that they change only on purpose: a verdict hides what moves it by
// little. `npx vitest run test/slips/terms.test.ts --update` writes them anew; what a change was for says which may differ.
import { expect, test } from 'vitest'
// @ts-expect-error the calibration scripts carry no types
import { groupOf, readRatings } from '../../.scripts/calibrate/ratings.mjs'
import { evidenceOf, noteOf } from '../../server/src/check/panel-note.ts'
import { readFile } from '../../server/src/records/read.ts'
import type { ReadFile } from '../../server/src/records/read-file.ts'
import { familyOf, type Family } from '../../server/src/slips/family/family.ts'
import type { Evidence } from '../../server/src/slips/evidence.ts'
import { flexibles } from './flexible.ts'
import { mistakes } from './mistakes.ts'
import { evidence as given, tern } from './records.ts'
import { halves, printed, yamlOf, type Row, type Texts } from './rows.ts'
import { termsOf } from './terms.ts'
import { unplanned, unplannedOf } from './unplanned.ts'

const kinds = [
  ...['digits swapped', 'digit dropped', 'neighbouring key', 'point moved', 'voltages swapped', 'coefficients swapped'],
  ...[
    'length unit',
    'cell count',
    'row of NOCT',
    'column beside',
    'efficiency of the cells',
    'voltage of two in series',
  ],
  ...['NOCT in Fahrenheit', 'kg typed as lb', 'pair in parallel', 'sides: in typed as mm', 'thickness as width'],
]
const ofGlass = halves(readRatings('test/published/data/modules-open.csv').filter(groupOf) as Row[])[0]
const kinOf = (row: Row) => ofGlass.filter((one) => one !== row && row['family'] && one['family'] === row['family'])
const inFamilies = ofGlass.filter((row) => kinOf(row).length > 0)
const ofFlexible = [...flexibles(30, 83), ...flexibles(30, 83, 'laid out')]

/** What a hand may leave out of a sheet. */
const sparse = [
  ['/stc/efficiency', '/size/length', '/size/width', '/cells/in_series', '/temperature_coefficients/voc'],
  ['/size/width', '/stc/isc'],
]
const without = (texts: Texts, left: readonly string[]): Texts =>
  Object.fromEntries(Object.entries(texts).filter(([pointer]) => !left.includes(pointer)))

const evidence = (row: Row, texts: Texts): Evidence =>
  evidenceOf(noteOf(readFile('own.panel.yaml', yamlOf(row, texts)) as ReadFile<'panel'>))

const figure = (x: number) => (Math.abs(x) < 1e-9 ? '0' : x.toPrecision(4))

function lines(own: Evidence, family: Family | null): readonly string[] {
  const { gains, typed, tried } = termsOf(own, family, 16)
  const parts = ({ core, arithmetic, shape, family: ofFamily }: typeof typed) =>
    [core, arithmetic, shape, ofFamily].map(figure).join(' ')
  return [
    `  could gain: ${gains.map(([name, gain]) => `${name} ${figure(gain)}`).join(', ')}`,
    `  as typed: ${parts(typed)}`,
    ...tried.map((one) => `  ${parts(one)}, prior ${figure(one.prior)}, score ${figure(one.score)}: ${one.what}`),
  ]
}

test.each(kinds)('the terms of a record with %s', async (kind) => {
  const made = [inFamilies, ofFlexible].flatMap((rows) =>
    kind in unplanned ? unplannedOf(rows, kind, 1, 31) : mistakes(rows, kind, 1, 31),
  )
  const all = made.flatMap(({ row, texts, pointers }) => {
    const own = evidence(row, texts)
    const family = familyOf(
      own,
      kinOf(row).map((one) => evidence(one, printed(one))),
    )
    const typed = `${row['id']}, ${pointers.map((pointer) => `${pointer} ${texts[pointer]}`).join(', ')}`
    return [
      `${typed}: core, arithmetic, shape, family`,
      ...lines(own, null),
      ...(family ? ['beside its family', ...lines(own, family)] : []),
      ...sparse.flatMap((left) => ['with fields left out', ...lines(evidence(row, without(texts, left)), null)]),
    ]
  })
  await expect(`${all.join('\n')}\n`).toMatchFileSnapshot(`terms/${kind.replaceAll(/[^A-Za-z]+/g, '-')}.txt`)
})

test.each<[what: string, typed: Texts]>([
  ['a number that is not finished', { '/stc/vmp': '186. V' }],
  ['sides in two units', { '/size/length': '119 cm', '/size/width': '540 cm' }],
  ['a side without a unit', { '/size/length': '46.9' }],
  ['a coefficient in volts', { '/temperature_coefficients/voc': '-0.64 V/°C' }],
  [
    'a coefficient of a letter too few',
    { '/temperature_coefficients/pmax': '-.38', '/temperature_coefficients/isc': '0.5 %/°C' },
  ],
  ['both currents of another panel', { '/stc/imp': '2.96 A', '/stc/isc': '3.16 A' }],
  ['a column of another row', { '/stc/pmax': '81 W', '/stc/vmp': '17.2 V', '/stc/imp': '4.71 A' }],
  [
    'next to nothing',
    { '/stc/voc': '2.21 V', '/size/length': '', '/size/width': '', '/stc/efficiency': '', '/stc/isc': '' },
  ],
])('the terms of an invented panel with %s', async (what, typed) => {
  const texts = Object.fromEntries(Object.entries({ ...tern, ...typed }).filter(([, text]) => text !== ''))
  const all = ['flexible', 'rigid'].flatMap((construction) => [
    construction,
    ...lines(given('mono', texts, construction), null),
  ])
  await expect(`${all.join('\n')}\n`).toMatchFileSnapshot(`terms/tern-${what.replaceAll(' ', '-')}.txt`)
})
