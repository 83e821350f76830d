// What each slip makes of a printed text, taken back by hand: the text that was meant is among those that are tried, and what no
// such slip makes is not.
import { expect, test } from 'vitest'
import { frameOf } from '../../server/src/slips/density/coherence.ts'
import { pointers } from '../../server/src/slips/evidence.ts'
import { calibration } from '../../server/src/slips/model/calibration.generated.ts'
import { candidates } from '../../server/src/slips/typos/candidates.ts'
import { evidence, tern } from './records.ts'

const [gamma, beta, alpha] = ['pmax', 'voc', 'isc'].map((key) => `/temperature_coefficients/${key}`) as [
  string,
  string,
  string,
]

function tried(texts: Readonly<Record<string, string>>, construction: string) {
  const all = evidence('mono', texts, construction)
  return candidates(all, frameOf(all, calibration.mono, true, null))
}

/** Reasons with which a text is tried in a field. */
function reasonsFor(
  pointer: string,
  typed: Readonly<Record<string, string>>,
  meant: string,
  construction = 'flexible',
) {
  const all = tried({ ...tern, ...typed }, construction).of(pointers.findIndex((one) => one === pointer))
  return all.flatMap(({ texts, why }) => (texts[0] === meant ? [why.say] : []))
}

test.each<[why: string, pointer: string, typed: string, meant: string]>([
  // a share of 1 is 100 %
  ['fractionAsPercent', gamma, '-0.0038 %/°C', '-0.38 %/°C'],
  ['fractionAsPercent', beta, '-0.0029 %/°C', '-0.29 %/°C'],
  ['fractionAsPercent', alpha, '0.0005 %/°C', '0.050 %/°C'],
  ['fractionAsPercent', '/stc/efficiency', '0.171 %', '17.1 %'],
  // 110 W x -0.38 % is -0.418 W, 22.1 V x -0.29 % is -0.0641 V, 6.31 A x 0.05 % is 0.00316 A
  ['ofModuleAsPercent', gamma, '-0.418 %/°C', '-0.38 %/°C'],
  ['ofModuleAsPercent', beta, '-0.0641 %/°C', '-0.29 %/°C'],
  ['ofModuleAsPercent', beta, '-64 %/°C', '-0.29 %/°C'],
  ['ofModuleAsPercent', alpha, '0.00316 %/°C', '0.050 %/°C'],
  ['ofModuleAsPercent', alpha, '3.16 %/°C', '0.050 %/°C'],
  ['milliamperes', '/stc/imp', '5920 A', '5.92 A'],
  ['milliamperes', '/stc/isc', '6310 A', '6.31 A'],
  ['milliamperes', '/noct/imp', '4710 A', '4.71 A'],
  ['unitForUnit', '/stc/pmax', '110 kW', '110 W'],
  ['unitForUnit', '/stc/voc', '22.1 mV', '22.1 V'],
  ['unitForUnit', '/size/length', '1190 cm', '1190 mm'],
  ['unitForUnit', '/size/width', '540 in', '540 mm'],
  ['unitForUnit', '/size/length', '1190 m', '1190 mm'],
  // 46 °C is 115 °F
  ['unitForUnit', '/noct/temperature', '115 °C', '46 °C'],
  ['unitForUnit', '/noct/temperature', '46 °F', '46 °C'],
  ['noUnit', '/size/length', '1.19', '1.19 m'],
  // 36 cells of 22.1 V lose 64.1 mV a degree, 1.78 mV each
  ['perCell', beta, '-0.00178 V/°C', '-0.0641 V/°C'],
  ['signLost', gamma, '0.38 %/°C', '-0.38 %/°C'],
  ['signLost', beta, '0.29 %/°C', '-0.29 %/°C'],
  ['halfCells', '/cells/in_series', '72', '36'],
  ['usualCount', '/cells/in_series', '63', '60'],
  ['usualCount', '/cells/in_series', '63', '44'],
  ['digitAdded', '/cells/in_series', '361', '36'],
  // Pmax is Vmp x Imp: 18.6 V x 5.92 A is 110.1 W
  ['product', '/stc/pmax', '73 W', '110 W'],
  ['overImp', '/stc/vmp', '31.7 V', '18.6 V'],
  ['overVmp', '/stc/imp', '8.08 A', '5.91 A'],
  ['productAtNoct', '/noct/pmax', '63 W', '81.0 W'],
  ['overImpAtNoct', '/noct/vmp', '12.9 V', '17.2 V'],
  ['overVmpAtNoct', '/noct/imp', '3.33 A', '4.71 A'],
  // 110 W over 1190 mm x 540 mm is 17.1 % of 1000 W/m2
  ['overArea', '/stc/efficiency', '14.3 %', '17.1 %'],
  // at NOCT a panel gives about 0.74 of its power, 0.8 of Imp and 0.81 of Isc
  ['valueAtNoct', '/stc/pmax', '81 W', '110 W'],
  ['valueAtNoct', '/stc/imp', '4.73 A', '5.91 A'],
  ['valueAtNoct', '/stc/isc', '5.11 A', '6.31 A'],
])('%s: %s %s is tried as %s', (why, pointer, typed, meant) => {
  expect(reasonsFor(pointer, { [pointer]: typed }, meant)).toContain(why)
})

test.each<[why: string, pointer: string, typed: Record<string, string>, not: string, construction?: string]>([
  // nothing but a share is a fraction of one
  ['fractionAsPercent', gamma, { [gamma]: '-1.38 %/°C' }, '-138.00 %/°C'],
  ['fractionAsPercent', '/stc/voc', { '/stc/voc': '0.221 V' }, '22.1 V'],
  // a coefficient in volts is none in per cent
  ['ofModuleAsPercent', beta, { [beta]: '-0.0641 V/°C' }, '-0.29 V/°C'],
  ['ofModuleAsPercent', '/stc/efficiency', { '/stc/efficiency': '18.8 %' }, '17.1 %'],
  // 29 A is a current of its own, and a voltage is not in milliamperes
  ['milliamperes', '/stc/isc', { '/stc/isc': '29 A' }, '0.03 A'],
  ['milliamperes', '/stc/voc', { '/stc/voc': '2210 V' }, '2.2 V'],
  // one cell has no fewer
  ['perCell', beta, { [beta]: '-0.00178 V/°C', '/cells/in_series': '1' }, '-0.00178 V/°C'],
  ['perCell', beta, { [beta]: '-0.29 %/°C' }, '-10.4 %/°C'],
  ['unitForUnit', '/size/length', { '/size/length': '1190 mm' }, '1190 mm'],
  ['halfCells', '/cells/in_series', { '/cells/in_series': '63' }, '31.5'],
  ['digitAdded', '/cells/in_series', { '/cells/in_series': '144' }, '14'],
  ['usualCount', '/cells/in_series', { '/cells/in_series': '63' }, '40', 'rigid'],
  ['otherCount', '/cells/in_series', { '/cells/in_series': '63' }, '33'],
  // a sign is lost of what has one
  ['signLost', '/stc/voc', { '/stc/voc': '22.1 V' }, '-22.1 V'],
])('%s: %s %o is not tried as %s', (why, pointer, typed, not, construction) => {
  expect(reasonsFor(pointer, typed, not, construction)).not.toContain(why)
})

test('cells of glass are counted otherwise', () => {
  expect(reasonsFor('/cells/in_series', { '/cells/in_series': '61' }, '33', 'rigid')).toContain('otherCount')
  expect(reasonsFor('/cells/in_series', { '/cells/in_series': '61' }, '72', 'rigid')).toContain('usualCount')
})

test('both sides in another unit are one slip, and so is a point that moved in both', () => {
  const texts = { ...tern, '/size/length': '46.9', '/size/width': '21.3' }
  const sides = tried(texts, 'flexible')
    .ofPairs(pointers.map((_, field) => field))
    .filter(({ fields }) => fields.length === 2 && pointers[fields[0]!] === '/size/length')
  expect(sides.map((one) => one.texts)).toEqual(
    expect.arrayContaining([
      ['46.9 in', '21.3 in'],
      ['46.9 cm', '21.3 cm'],
      ['46.9 m', '21.3 m'],
      ['469', '213'],
    ]),
  )
  expect(sides.map((one) => one.texts)).not.toContainEqual(['46.9 mm', '21.3 mm'])
})

test('sides in two units, or one alone, are no slip of both', () => {
  const pairs = (width: string) =>
    tried({ ...tern, '/size/length': '46.9 in', '/size/width': width }, 'flexible')
      .ofPairs(pointers.map((_, field) => field))
      .filter(({ fields }) => pointers[fields[0]!] === '/size/length')
  expect(pairs('540 mm')).toEqual([])
  expect(pairs('21.3 in')).not.toEqual([])
})

test('the values of two fields that are printed beside each other may be exchanged', () => {
  const exchanged = (suspects: readonly string[]) =>
    tried(tern, 'flexible')
      .ofPairs(suspects.map((pointer) => pointers.findIndex((one) => one === pointer)))
      .map(({ fields, texts }) => [...fields.map((field) => pointers[field]), ...texts])
  const voltages = ['/stc/voc', '/stc/vmp', '18.6 V', '22.1 V']
  expect(exchanged(['/stc/voc'])).toEqual([voltages])
  expect(exchanged(['/stc/vmp'])).toEqual([voltages, ['/stc/vmp', '/stc/imp', '5.92 V', '18.6 A']])
  expect(exchanged(['/stc/isc'])).toEqual([['/stc/isc', '/stc/imp', '5.92 A', '6.31 A']])
  expect(exchanged([gamma])).toEqual([[gamma, beta, '-0.29 %/°C', '-0.38 %/°C']])
  expect(exchanged(['/stc/pmax'])).toEqual([])
})
