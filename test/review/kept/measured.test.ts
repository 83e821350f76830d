// What is said of measured strings with and without faults, kept as in kept.test.ts.
import { expect, test } from 'vitest'
import { createLibrary } from '../../../server/src/library/create.ts'
import { reviewOf, type Built, type Day } from '../measured/day.ts'
import { inLines, printed } from './in-lines.ts'

const arrays: readonly Built[] = [
  { id: 'main', sheet: 'flexible', series: 2, strings: 3 },
  { id: 'aft', sheet: 'half', series: 2, strings: 2 },
]
const day: Day = { date: '2026-06-14', irradiance: 780, temperature: 52 }
const at = 'main 2'
const aged = (years: readonly number[], share: number): Day[] =>
  years.map((n) => ({ ...day, date: `${2020 + n}-06-14`, faults: { all: { age: 1 - share * n } } }))

const days: Readonly<Record<string, readonly Day[]>> = {
  sound: [day],
  'a panel less': [{ ...day, faults: { [at]: { missing: 1 } } }],
  'a shorted diode': [{ ...day, faults: { [at]: { shorted: 1 } } }],
  shade: [{ ...day, faults: { [at]: { light: 0.8 } } }],
  'dirt on all': [{ ...day, faults: { all: { light: 0.85 } } }],
  'strings exchanged': [{ ...day, swapped: [at, 'aft 1'] }],
  reversed: [{ ...day, reversed: at }],
  aged: aged([0, 2, 4, 6], 0.015),
  'aged fast': aged([0, 3], 0.05),
  'aged beyond its warranty': aged([0, 6], 0.04),
  'dull light': [{ ...day, irradiance: 260, faults: { [at]: { light: 0.8 } } }],
}

/** The same readings written down in other ways, or with a mistake. */
const typings: Readonly<Record<string, (yaml: string) => string>> = {
  'no irradiance': (yaml) => yaml.replaceAll(/ +irradiance: .*\n/g, ''),
  'no cell temperature': (yaml) => yaml.replaceAll(/ +cell_temperature: .*\n/g, ''),
  'air for the cells': (yaml) => yaml.replaceAll(/cell_temperature: .*/g, 'air: 26 °C'),
  'a reference panel': (yaml) =>
    yaml.replaceAll(
      /irradiance: .*/g,
      'reference: { panel: { stc: { isc: 6.31 A }, temperature_coefficients: { isc: 0.05 %/°C } }, isc: 4.99 A }',
    ),
  'strings without a number': (yaml) => yaml.replaceAll(/string: \d, /g, ''),
  'voltages alone': (yaml) => yaml.replaceAll(/, isc: .* \}/g, ' }'),
  'currents alone': (yaml) => yaml.replaceAll(/voc: [^,]+, |, vmp: [^,]+/g, ''),
  'Voc and Vmp exchanged': (yaml) => yaml.replace(/(string: 1, voc: )(\S+)(.*vmp: )(\S+)/, '$1$4$3$2'),
  'a point moved': (yaml) => yaml.replace(/(string: 2, voc: )(\d+)\.(\d)/, '$1$2$3'),
  'a digit of the irradiance left out': (yaml) => yaml.replace(/(irradiance: \d\d)\d/, '$1'),
  'no date': (yaml) => yaml.replace(/- date: \S+\n +/, '- '),
  'another array': (yaml) => yaml.replace('array: main', 'array: fore'),
  'a string too many': (yaml) => yaml.replace('string: 3', 'string: 4'),
  'one string twice': (yaml) => yaml.replace('string: 3', 'string: 2'),
  'no coefficients': (yaml) => yaml.replaceAll(/ +temperature_coefficients: .*\n/g, ''),
  'no warranty': (yaml) => yaml.replaceAll(/ +warranty: .*\n/g, ''),
  'ratings without Vmp and Imp': (yaml) => yaml.replaceAll(/vmp: \S+ V, imp: \S+ A, voc/g, 'voc'),
}

const isOfDay = /^[/](review[/](measurements|power_left)|page[/](measured|warranty)|pictures[/]powerHistories)/

async function keep(name: string, yaml: string) {
  const library = createLibrary()
  library.put('wattproof.yaml', 'format: 1\n')
  library.put('own.system.yaml', yaml)
  const all = printed(library, 'own.system.yaml')
  const start = all.indexOf('Measured on the day')
  const table = start < 0 ? [] : all.slice(start, all.indexOf('', start))
  const own = inLines(library, 'own.system.yaml', true).filter((line) => !/^\//.test(line) || isOfDay.test(line))
  await expect(`${[...table, ...own].join('\n')}\n`).toMatchFileSnapshot(
    `measured/${name.replaceAll(/[^A-Za-z]+/g, '-')}.txt`,
  )
}

test.each(Object.entries(days))('measured: %s', (name, list) => keep(name, reviewOf(arrays, list, 5).yaml))

test.each(Object.entries(typings))('measured: %s', (name, typed) => {
  const { yaml } = reviewOf(arrays, days.shade!, 5)
  const other = typed(yaml)
  expect(other).not.toBe(yaml)
  return keep(name, other)
})
