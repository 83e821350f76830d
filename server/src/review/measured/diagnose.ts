import type { ResolvedPanels, ResolvedSystem } from '../resolved.ts'
import { stringsOf } from '../strings.ts'
import { causeOfVoltage, type Diagnosis, type Fits } from './causes.ts'
import { height, isApart, lowness, type Doubt } from './doubts.ts'
import { fitsAs } from './slip.ts'
import { stringExpected } from './panel-expected.ts'
import type { MeasuredString, Quantity } from './string.ts'

/** What else there is beside one string. */
export interface Around {
  readonly system: ResolvedSystem
  readonly all: readonly MeasuredString[]
}

/** What is likeliest to be wrong with one string by itself; null where nothing is, or where it cannot be distinguished. */
export function diagnose(
  string: MeasuredString,
  doubts: readonly Doubt[],
  around: Around,
  limit: number,
): Diagnosis | null {
  const voc = string.readings.get('voc')
  if (voc && voc.value < 0) return { cause: 'reversed' }
  const low = lowness(voc, limit)
  const byVoltage = low && causeOfVoltage(string.panels, -low.by.share, low.by.uncertainty)
  const stranger = low || height(voc, limit) || doubts.length > 0 ? ofAnotherArray(string, around) : null
  if (stranger && (stranger.swapped || !byVoltage)) return { cause: 'string of another array', fits: stranger.other }
  if (byVoltage) return { cause: byVoltage }
  if (low) return null
  const ofCurrent = doubts.some(({ reading, power }) => reading.quantity === 'isc' && !power)
  return ofCurrent || (doubts.length > 0 && isApart(string, limit)) ? { cause: 'shade or dirt' } : null
}

/** A string of another array that this one would be, and whether what was measured on that one on the same day would be this. */
function ofAnotherArray(string: MeasuredString, { system, all }: Around): { other: Fits; swapped: boolean } | null {
  const fitting = system.arrays
    .filter((array) => array !== string.array)
    .flatMap((array) => stringsOf(array).map((panels, i) => ({ array, panels, number: i + 1 })))
    .filter(({ panels }) => fitsAs(string, here(panels, string)))
  const day = string.measurement.entry.date?.value
  const swapped = fitting.find(({ array, number }) =>
    all.some(
      (one) =>
        one.array === array &&
        one.number === number &&
        one.measurement.entry.date?.value === day &&
        fitsAs(one, here(string.panels, one)),
    ),
  )
  const [first] = fitting
  return swapped ? { other: swapped, swapped: true } : first ? { other: first, swapped: false } : null
}

/** What panels are expected to give in the conditions of a measurement, as far as those of its own are known. */
function here(
  panels: readonly ResolvedPanels[],
  { conditions, expected }: MeasuredString,
): Pick<MeasuredString, 'expected'> {
  const { irradiance, temperature } = conditions
  const nothing = { voc: null, isc: null, vmp: null, imp: null }
  if (!irradiance || !temperature) return { expected: nothing }
  const wanted = stringExpected(
    panels.map(({ panel }) => panel?.record),
    { irradiance: irradiance.value, temperature: temperature.value },
  )
  const known = (quantity: Quantity) => (expected[quantity] === null ? null : wanted[quantity])
  return { expected: { voc: known('voc'), isc: known('isc'), vmp: known('vmp'), imp: known('imp') } }
}
