import { readFileSync } from 'node:fs'
import { pathToFileURL } from 'node:url'
import { expect, test } from 'vitest'
import { toBase } from '../../server/src/quantities/format.ts'
import { inUsual } from '../../server/src/wording/usual-units.ts'
import { startServer } from '../editor/client.ts'
import { wattproof } from '../terminal/run.ts'

// NIST Special Publication 811 (2008), appendix B.8: the foot, the inch and the pound are exact
test.each([
  { value: 0.3048, unit: 'm', us: [1, 'ft'] },
  { value: 25.4, unit: 'mm', us: [1, 'in'] },
  { value: 9.290304e-2, unit: 'm2', us: [1, 'ft2'] },
  { value: 0.45359237, unit: 'kg', us: [1, 'lb'] },
  { value: 4.882428, unit: 'kg/m2', us: [1, 'lb/ft2'] },
  { value: 1, unit: 'W/kg', us: [0.45359237, 'W/lb'] },
  { value: -40, unit: '°C', us: [-40, '°F'] },
  { value: 100, unit: 'degC', us: [212, '°F'] },
  { value: 1000, unit: 'W/m2', us: [1000, 'W/m2'] },
  { value: 6, unit: 'mm2', us: [6, 'mm2'] },
])('$value $unit is $us, and stays in metric units', ({ value, unit, us: [number, name] }) => {
  const usual = inUsual(value, unit, 'us')
  expect(usual.unit).toBe(name)
  expect(usual.value).toBeCloseTo(number as number, 6)
  expect(inUsual(value, unit, 'metric')).toEqual({ value, unit })
})

// records are read with factors of their own
test.each(['m', 'cm', 'mm', 'm2', 'kg'])('what is said in US units instead of %s is read back as the same', (unit) => {
  const { value, unit: other } = inUsual(7, unit, 'us')
  expect(toBase(value, other)).toBeCloseTo(toBase(7, unit), 9)
})

const van = 'samples/systems/van.system.yaml'
const tern = 'samples/library/panels/tern-110.panel.yaml'

test.each([
  { args: ['values', tern], says: ['6.92 ft2', '13.9 W/lb', '194 °F', 'weight 2.2 kg'] },
  { args: ['review', van], says: ['49.4 of 66.1 lb', 'air of 5 °F', 'air of 93.2 °F'] },
  { args: ['compare', van, '--surface', 'roof'], says: ['49.4 lb'] },
  { args: ['compare', tern, '--columns', 'w_per_kg'], says: ['22.7 W/lb'] },
  { args: ['report', van, '--format', 'markdown'], says: ['49.4 lb', '93.2 °F'] },
  {
    args: ['check', 'samples/systems/hazards/colder-than-the-battery.system.yaml'],
    says: ['It gets as cold as -23.8 °F, and the battery may be used down to -4 °F'],
  },
])('$args says what it works out in US units, and what was typed as it was typed', ({ args, says }) => {
  const { out } = wattproof([...args, '--units', 'us'])
  for (const text of says) expect(out).toContain(text)
  expect(wattproof([...args, '--units', 'metric']).out).toBe(wattproof(args).out)
})

test.each([
  ['values', tern, '--format', 'json'],
  ['compare', tern, '--format', 'csv'],
  ['table', 'samples/library/panels', '--format', 'csv'],
])('%s %s %s %s are the same numbers whatever a reader is used to', (...args) => {
  expect(wattproof([...args, '--units', 'us']).out).toBe(wattproof(args).out)
})

test('an editor may ask for them', async () => {
  const client = await startServer({ initializationOptions: { units: 'us' } })
  const uri = pathToFileURL(tern).href
  const text = readFileSync(tern, 'utf8')
  await client.open(uri, text)
  const hover = await client.request<{ contents: { value: string } }>('textDocument/hover', {
    textDocument: { uri },
    position: { line: text.split('\n').findIndex((line) => line.startsWith('weight:')), character: 1 },
  })
  await client.stop()
  expect(hover.contents.value).toContain('13.9 W/lb')
})
