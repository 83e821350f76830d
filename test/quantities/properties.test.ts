import fc from 'fast-check'
import { phraseInWords } from '../../server/src/wording/phrase.ts'
import { expect, test } from 'vitest'
import { formatNumber, fromBase, toBase, unitsFor } from '../../server/src/quantities/format.ts'
import { kinds } from '../../server/src/quantities/kinds.ts'
import type { QuantityKind, Reading } from '../../server/src/quantities/quantity.ts'
import { readQuantity } from '../../server/src/quantities/read.ts'

const kind = fc.constantFrom(...(Object.keys(kinds) as QuantityKind[]))
const oneNumber = kind.filter((k) => k !== 'temperature-range' && k !== 'tolerance')
const options = fc.constantFrom({}, { unit: 'W' }, { unit: 'mm' }, { unit: '%/°C' }, { unit: '%' }, { currency: 'USD' })

/** Pieces of datasheet text in any order: far likelier to hit a corner than random characters. */
const pieces =
  '0 5 18.6 1,190 1.190,5 46 7/8 1e3 1e999 _ . , .. … - − – + ± ~ ≥ / x × to per ( ) % V mV W A mm in " \' ft °C ºC ℃ K °F %/K mV/°C $ € USD AWG Ω Ω ² µ ½ 1 TBD n/a typ \u00a0 \u200b \u{1F50B}'
const scraps = fc
  .array(fc.constantFrom(...pieces.split(' '), ' ', '\u00a0'), { maxLength: 8 })
  .map((parts) => parts.join(''))
const text = fc.oneof(scraps, fc.string(), fc.string({ unit: 'binary' }))

const notes = (read: Reading) => (read.problem ? [read.problem] : read.notes)

test('reading never throws, and offsets lie inside the text', () => {
  fc.assert(
    fc.property(text, kind, options, (typed, k, o) => {
      const read = readQuantity(typed, k, o)
      for (const { start, end, message } of notes(read)) {
        expect(0 <= start && start <= end && end <= typed.length).toBe(true)
        expect(phraseInWords(message)).toMatch(/^\S.*\S$/s)
      }
      if (read.quantity) {
        expect(Number.isFinite(read.quantity.value) && read.quantity.half >= 0).toBe(true)
        expect(read.quantity.upper === undefined || read.quantity.value <= read.quantity.upper).toBe(true)
      }
    }),
    { numRuns: 4000 },
  )
})

test('every fix reads without a problem; a fix of the same meaning keeps the value', () => {
  fc.assert(
    fc.property(text, kind, options, (typed, k, o) => {
      const read = readQuantity(typed, k, o)
      for (const fix of notes(read).flatMap((note) => note.fixes)) {
        const again = readQuantity(fix.text, k, o)
        expect(again.problem).toBeUndefined()
        if (read.quantity && fix.certainty === 'same') {
          const { value, upper, unit } = read.quantity
          expect(again.quantity).toMatchObject({ value, unit, ...(upper !== undefined && { upper }) })
        }
      }
    }),
    { numRuns: 4000 },
  )
})

test('a number and a usual unit read back as that number', () => {
  const number = fc.tuple(fc.integer({ min: -99999, max: 99999 }), fc.integer({ min: 0, max: 4 }))
  fc.assert(
    fc.property(oneNumber, number, fc.nat(), (k, [digits, decimals], pick) => {
      const units = unitsFor(k).filter((u) => u !== 'AWG' || k === 'money')
      const unit = units[pick % units.length]!
      // three decimals of a price may be thousands, which is another test
      fc.pre(k !== 'money' || decimals !== 3)
      const typed = (digits / 10 ** decimals).toFixed(decimals)
      const { quantity } = readQuantity(`${typed} ${unit}`, k)
      const base = k === 'money' ? Number(typed) : toBase(Number(typed), unit)
      expect(quantity).toMatchObject({ value: base, unit, unitDefaulted: false })
    }),
  )
})

test('what is formatted reads back within the digits that were kept', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-3, max: 1e4, noNaN: true }),
      fc.constantFrom('mm', 'in', 'm', 'ft'),
      (value, unit) => {
        const typed = `${formatNumber(fromBase(value, unit), 6)} ${unit}`
        const { quantity } = readQuantity(typed, 'length')
        expect(Math.abs(quantity!.value - value)).toBeLessThanOrEqual(value * 1e-5)
      },
    ),
  )
})
