// What a hover says of the figures of a system and of values measured on it, kept as in kept.test.ts.
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { checkFile } from '../../../server/src/check/check.ts'
import { createLibrary } from '../../../server/src/library/create.ts'
import type { InputShown, Value } from '../../../server/src/values/value.ts'
import { reviewOf, type Built, type Day } from '../measured/day.ts'

const input = ({ name, value, unit, text, pointer }: InputShown) =>
  [name, text, `(${Number(value.toPrecision(6))} ${unit})`, pointer].join(' ')

const lines = ({ id, label, value, unit, text, formula, inputs, missing, source, uncertainty, pointer }: Value) => [
  `${id}, ${label}: ${text || 'nothing'} (${value === null ? 'unknown' : Number(value.toPrecision(6))} ${unit}) at ${pointer}`,
  `  ${formula}`,
  `  from ${source}`,
  ...inputs.map((one) => `  with ${input(one)}`),
  ...missing.map((one) => `  without ${one}`),
  ...(uncertainty === null ? [] : [`  give or take ${uncertainty}`]),
]

async function keep(name: string, yaml: string, isOfInterest: (id: string) => boolean) {
  const library = createLibrary()
  library.put('wattproof.yaml', 'format: 1\ncurrency: USD\n')
  library.put('own.system.yaml', yaml)
  const all = checkFile(library, 'own.system.yaml', { today: '2026-11-25', years: 1 })!.values()
  const own = all.filter(({ id }) => isOfInterest(id))
  expect(own.length).toBeGreaterThan(0)
  // a formula and a source once, where they are first
  const seen = new Set<string>()
  const kept = own
    .flatMap(lines)
    .filter((line) => !/^ {2}(?!with|give)/.test(line) || (!seen.has(line) && seen.add(line)))
  await expect(`${kept.join('\n')}\n`).toMatchFileSnapshot(`values/${name.replaceAll(/\W+/g, '-')}.txt`)
}

const complete = readFileSync(new URL('complete.system.yaml', import.meta.url), 'utf8')
const nothingElse = /^ {2}(?:fuse|cable|wiring|battery|autonomy): .*\n/gm

test.each([
  ['a complete system', complete],
  ['no wiring, cable and fuses', complete.replaceAll(nothingElse, '')],
])('values of %s', (name, yaml) => keep(name, yaml, () => true))

const arrays: readonly Built[] = [
  { id: 'main', sheet: 'flexible', series: 2, strings: 2 },
  { id: 'aft', sheet: 'half', series: 2, strings: 1 },
]
const day: Day = { date: '2026-06-14', irradiance: 780, temperature: 52 }
const years = (list: readonly number[], lost: number): Day[] =>
  list.map((n) => ({ ...day, date: `${2020 + n}-06-14`, faults: { all: { age: 1 - lost * n } } }))
const reference = 'reference: { panel: { stc: { isc: 6.31 A } }, isc: 4.99 A }'

test.each<[string, readonly Day[], (yaml: string) => string]>([
  ['one day', [day], (yaml) => yaml],
  ['years within the warranty', years([0, 4, 8], 0.004), (yaml) => yaml],
  ['years below the warranty', years([0, 3, 6], 0.03), (yaml) => yaml],
  ['no warranty', years([0, 4], 0.01), (yaml) => yaml.replaceAll(/ +warranty: .*\n/g, '')],
  [
    'air and a reference panel',
    [day],
    (yaml) => yaml.replace(/cell_temperature: .*/, 'air: 26 °C').replace(/irradiance: .*/, reference),
  ],
  ['no sun', [day], (yaml) => yaml.replaceAll(/ +irradiance: .*\n/g, '')],
  ['currents typed with a sign', [day], (yaml) => yaml.replaceAll('isc: ', 'isc: -').replaceAll('imp: ', 'imp: -')],
])('values measured: %s', (name, days, typed) =>
  keep(`measured, ${name}`, typed(reviewOf(arrays, days, 5).yaml), (id) => id.startsWith('measurements')),
)
