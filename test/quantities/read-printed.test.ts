import { expect, test } from 'vitest'
import { kinds } from '../../server/src/quantities/kinds.ts'
import type { QuantityKind } from '../../server/src/quantities/quantity.ts'
import { readInAnyForm } from '../../server/src/quantities/read.ts'
import { readPrinted } from '../../server/src/quantities/read-printed.ts'
import { units } from '../../server/src/quantities/units.ts'

const all = Object.keys(kinds) as QuantityKind[]
const numbers = [
  '0',
  '-0',
  '-0.36',
  '0.050',
  '18.6',
  '18.60',
  '110',
  '1190',
  '46',
  '120000',
  '1234567',
  '007',
  '1.',
  '.5',
  '1e3',
  '1,5',
  '−3',
  '+3',
]

test('what is read at once is read in the same way as any other form, whatever the unit', () => {
  let read = 0
  for (const kind of all)
    for (const unit of new Set([...kinds[kind].units, ...units.keys(), 'USD', 'x']))
      for (const number of numbers)
        for (const text of [`${number} ${unit}`, `${number}${unit}`, `${number}  ${unit}`, `${number} ${unit} `]) {
          const quantity = readPrinted(text, kind)
          if (quantity === null) continue
          read++
          expect({ text, reading: { quantity, notes: [] } }).toEqual({ text, reading: readInAnyForm(text, kind) })
        }
  expect(read).toBeGreaterThan(500)
})

test.each<[string, QuantityKind]>([
  ['110 W', 'power'],
  ['-0.36 %/°C', 'power-coefficient'],
  ['2.2 kg', 'mass'],
  ['17.1 %', 'ratio'],
])('%s of %s needs no other reader', (text, kind) => expect(readPrinted(text, kind)).not.toBeNull())

test.each<[string, QuantityKind]>([
  ['289 USD', 'money'],
  ['1,190 mm', 'length'],
  ['18.6 W', 'voltage'],
  ['18.6', 'voltage'],
])('%s of %s is left to the others', (text, kind) => expect(readPrinted(text, kind)).toBeNull())
