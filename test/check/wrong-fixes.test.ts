import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { today } from './checked.ts'

const panel = 'samples/library/panels/tern-110.panel.yaml'
const battery = 'samples/systems/batteries/example-lfp-100.battery.yaml'
const boat = 'samples/systems/boat.system.yaml'

/** What is found at a field of a sample after a part of it was typed in another way, with the texts that are offered. */
function found(path: string, field: string, from: string, to: string) {
  const text = readFileSync(path, 'utf8')
  expect(text).toContain(from)
  const library = createLibrary()
  for (const one of [panel, battery, boat, 'samples/systems/panels/puffin-115.panel.yaml'])
    library.put(one, one === path ? text.replace(from, to) : readFileSync(one, 'utf8'))
  const { findings } = checkFile(library, path, { today, years: 1 })!
  return findings
    .filter(({ rule, pointer, severity }) => pointer === field && (severity !== 'hint' || rule === 'unusual-spelling'))
    .map(({ rule, message, corrections }) => ({
      rule,
      message,
      offered: corrections.flatMap(({ text: one, also = [] }) => [one, ...also.map((two) => two.text)]),
    }))
}

test.each([
  // a load of 5 A takes 64 W: as many watts as amperes is a tenth of it, and nothing else in the file would notice
  [boat, '/loads/0/power', 'power: 45 W', 'power: 5 A', 'wrong-dimension', ['current']],
  [panel, '/stc/pmax', 'pmax: 110 W', 'pmax: 5 A', 'wrong-dimension', []],
  [panel, '/limits/system_voltage', '600 V', '6OO V', 'quantity-unreadable', ['600 V']],
  [battery, '/charge/max_current', 'max_current: 50 A', 'max_current: 1C', 'other-word', ['100 A']],
  [panel, '/size/length', 'length: 1190 mm', 'length: 46 7/8 kg', 'wrong-dimension', ['46 7/8 in']],
  [panel, '/size/length', 'length: 1190 mm', 'length: 1190 x 735 x 2.5 mm', 'two-numbers', []],
  // the rest of the record agrees with these
  [panel, '/stc/imp', 'imp: 5.92 A', 'imp: 5.92 V', 'wrong-dimension', ['5.92 A']],
  [panel, '/temperature_coefficients/pmax', 'pmax: -0.38 %/°C', 'pmax: -0.38 %', 'wrong-dimension', ['-0.38 %/°C']],
] as const)('%s: %s, %s typed as %s, is %s and offers %j', (path, field, from, to, rule, offered) => {
  expect(found(path, field, from, to)).toMatchObject([{ rule, offered }])
})

test('a charge rate is read as that share of the capacity', () => {
  const [one] = found(battery, '/charge/max_current', 'max_current: 50 A', 'max_current: 0.5C')
  expect(one!.message).toBe('0.5C is 50 A: 0.5 times the capacity 100 Ah.')
})

test('a charge rate without a capacity is called by its name', () => {
  const [one] = found(boat, '/loads/0/current', 'power: 45 W', 'current: 1C')
  expect(one!.message).toBe(
    '"1C" is a charge rate, a multiple of the capacity; a current is expected here, such as 6.31 A.',
  )
})

test('sizes 1/0 to 4/0 are wire gauges without being called so', () => {
  expect(found(boat, '/battery/cable/size', 'size: 25 mm2', 'size: 2/0')).toMatchObject([
    { rule: 'unusual-spelling', message: '"2/0" was read as 2/0 AWG.', offered: ['2/0 AWG'] },
  ])
})

test.each([
  ['length: 46.9, width: 21.3', '46.9 in', '21.3 in'],
  ['length: 119, width: 54', '119 cm', '54 cm', '1190', '540'],
])('%s are both in one unit, not one of them in another', (size, ...both) => {
  const impossible = found(panel, '/size/length', 'length: 1190 mm, width: 540 mm', size)
  expect(impossible.flatMap(({ offered }) => offered)).toEqual(both)
})

test('three sides that fit no other unit together leave no unit to offer', () => {
  const impossible = found(panel, '/size/length', 'length: 1190 mm, width: 540 mm', 'length: 46.9, width: 28.9')
  expect(impossible.flatMap(({ offered }) => offered)).not.toContain('46.9 m')
})
