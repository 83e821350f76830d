// The search tries a value by what it changes. It must say what the record would say if it had been typed so.
import { expect, test } from 'vitest'
import { coherenceWith } from '../../server/src/slips/density/coherence-with.ts'
import { frameOf, typedCoherence } from '../../server/src/slips/density/coherence.ts'
import { index, pointers, type Evidence, type Reading } from '../../server/src/slips/evidence.ts'
import { familyOf } from '../../server/src/slips/family/family.ts'
import { search } from '../../server/src/slips/find-slip.ts'
import { calibration } from '../../server/src/slips/model/calibration.generated.ts'
import { countsCells, groupOf } from '../../server/src/slips/model/group.ts'
import { evidence, tern } from './records.ts'

/** An invented module in glass. */
const glass = {
  ...tern,
  '/cells/in_series': '60',
  '/stc/pmax': '300 W',
  '/stc/vmp': '32.6 V',
  '/stc/imp': '9.21 A',
  '/stc/voc': '39.9 V',
  '/stc/isc': '9.77 A',
  '/stc/efficiency': '18.3 %',
  '/noct/pmax': '221 W',
  '/noct/vmp': '30.0 V',
  '/noct/imp': '7.37 A',
  '/size/length': '1650 mm',
  '/size/width': '992 mm',
}
const without = (texts: Record<string, string>, part: RegExp) =>
  Object.fromEntries(Object.entries(texts).filter(([pointer]) => !part.test(pointer)))
const sister = evidence('mono', { ...glass, '/stc/pmax': '305 W', '/stc/imp': '9.36 A', '/stc/isc': '9.86 A' })
const weighed = (one: Evidence): Evidence => ({
  ...one,
  readings: { ...one.readings, '/weight': { value: 2.2, half: 0.05, text: '2.2 kg' } },
})

/** `also` is what a field changes besides, which is not counted in what it may gain. */
const records: readonly [name: string, evidence: Evidence, siblings?: readonly Evidence[], also?: RegExp][] = [
  ['glass', evidence('mono', glass)],
  ['glass, of polycrystalline cells, a mistake in it', evidence('poly', { ...glass, '/stc/voc': '49.9 V' })],
  ['glass, without the row at NOCT', evidence('mono', without(glass, /noct/))],
  ['glass, without sides', evidence('mono', without(glass, /size|efficiency/))],
  ['glass, without cells', evidence('mono', without(glass, /cells/))],
  [
    'glass, with a coefficient in volts',
    evidence('mono', { ...glass, '/temperature_coefficients/voc': '-0.116 V/°C' }),
    [],
    /voc/,
  ],
  ['glass, with a sister', evidence('mono', glass), [sister]],
  ['thin film', evidence('cigs', { ...glass, '/cells/in_series': '106' })],
  ['flexible', evidence('mono', tern, 'flexible')],
  ['flexible, with its weight', weighed(evidence('mono', tern, 'flexible'))],
  [
    'flexible, with the efficiency of its cells',
    evidence('mono', { ...tern, '/stc/efficiency': '22.4 %' }, 'flexible'),
    [],
    /isc|cells/,
  ],
  ['flexible, without Isc', evidence('mono', without(tern, /stc.isc/), 'flexible')],
]

const raw: readonly number[] = [index.gamma, index.beta, index.alpha, index.noct, index.cells]

const perKelvin = '/temperature_coefficients/voc'
/** What may be gained is asked of the middle of a mixture, whose top may be beside it; a search that leaves off leaves 4. */
const slack = 0.5

/** Rounding stays the same share of a value, as the search leaves it to the record as typed. */
const halfOf = ({ value, half }: { value: number; half: number }, field: number, to: number) =>
  raw.includes(field) ? half : (half * to) / value

test.each(records)('%s: a value that is tried weighs as much as one that was typed', (_, typed, siblings) => {
  const [group, family] = [groupOf(typed), siblings?.length ? familyOf(typed, siblings, calibration) : null]
  const frame = (one: Evidence) => frameOf(one, calibration[group], countsCells(group), family)
  const own = frame(typed)
  const there = pointers.flatMap((pointer, field) => (typed.readings[pointer] ? [field] : []))
  const several = [there.slice(0, 2), there.slice(1, 6), there.slice(-3), there]
  const wrong: string[] = []
  for (const share of [0.1, 0.8, 0.97, 1.02, 1.2, 9])
    for (const fields of [...there.map((one) => [one]), ...several]) {
      const before = fields.map((field) => typed.readings[pointers[field]!]!)
      const values = before.map(({ value }, i) =>
        fields[i] === index.cells ? Math.round(value * share) : value * share,
      )
      const halves = before.map((one, i) => halfOf(one, fields[i]!, values[i]!))
      const changed = fields.map((field, i) => [
        pointers[field]!,
        { ...before[i]!, value: values[i]!, half: halves[i]! },
      ])
      const readings: Record<string, Reading> = Object.fromEntries(changed)
      // a coefficient in volts is a share of Voc, and so is its rounding
      const beta = readings[perKelvin] ?? typed.readings[perKelvin]
      if (beta && /V/.test(beta.text) && fields.includes(index.voc))
        readings[perKelvin] = { ...beta, half: beta.half * share }
      const candidate = { fields, values, halves, texts: [], why: { say: 'tried' } as never, prior: 0 }
      const tried = coherenceWith(own, candidate, -Infinity)
      const retyped = typedCoherence(frame({ ...typed, readings: { ...typed.readings, ...readings } }))
      const what = `${fields.map((field) => pointers[field]).join(' ')} x ${share}`
      if (Math.abs(tried - retyped) > 1e-6) wrong.push(`${what}: ${tried} tried, ${retyped} typed`)
      // what is certainly below a floor is left out, and nothing else
      if (coherenceWith(own, candidate, tried - slack) !== tried) wrong.push(`${what}: left out`)
    }
  expect(wrong).toEqual([])
})

test.each(records)('%s: no field gains more than was thought possible', (_, typed, siblings, also) => {
  const family = siblings?.length ? familyOf(typed, siblings, calibration) : null
  const wrong: string[] = []
  for (const share of [0.1, 0.8, 1.25, 10])
    for (const [field, pointer] of pointers.entries()) {
      const before = typed.readings[pointer]
      if (!before || field === index.cells || also?.test(pointer)) continue
      const value = before.value * share
      const off = { ...before, value, half: halfOf(before, field, value) }
      const { frame, suspects } = search(
        { ...typed, readings: { ...typed.readings, [pointer]: off } },
        family,
        calibration,
      )
      const back = { fields: [field], values: [before.value], halves: [before.half] }
      const gained = coherenceWith(frame, back as never, -Infinity) - typedCoherence(frame)
      const thought = suspects.find((one) => one.field === field)?.gain ?? 3
      if (!(gained < thought + slack))
        wrong.push(`${pointer} x ${share}: ${gained} gained, ${thought} thought possible`)
    }
  expect(wrong).toEqual([])
})
