import { designCurrent } from '../../physics/fuses.ts'
import type { ArrayFigures } from '../figures.ts'
import { wiringsThatWork } from '../rewire.ts'
import { stringIsc, stringVmpHot, stringVoc } from '../strings.ts'
import { laidArray, type Target } from './laid-array.ts'
import type { Candidate, ControllerChoice, Strings } from './row.ts'

/** A wiring of as many panels as can be wired, and the controller that takes it. */
export interface Wired {
  readonly strings: Strings
  readonly choice: ControllerChoice
}

/** The strings of one panel that a controller takes, whatever their number. */
export type Takes = (choice: ControllerChoice) => readonly Wiring[]

export function takesOf(target: Target, candidate: Candidate): Takes {
  const one = laidArray(target, candidate, [1, 1], undefined)
  const alone = { ...target.system, arrays: [one] }
  const isc = stringIsc(one)
  const figures = {
    voc_cold_v: stringVoc(one, alone.coldest.value),
    vmp_hot_v: stringVmpHot(alone, one),
    isc_design_a: isc === null ? null : designCurrent(isc),
  }
  const known = new Map<ControllerChoice, readonly Wiring[]>()
  return (choice) => {
    const wirings = known.get(choice) ?? wiringsOf(target, candidate, figures, choice)
    known.set(choice, wirings)
    return wirings
  }
}

/**
 * The strings that the array's own controller takes; where one of the library takes more of the panels, that one, the cheapest
 * first. Null where none takes a string.
 */
export function stringsFor(
  takes: Takes,
  count: number,
  own: ControllerChoice | undefined,
  library: readonly ControllerChoice[],
): Wired | null {
  const wiredBy = (choice: ControllerChoice) => mostWired(takes(choice), count, choice)
  let best = own ? wiredBy(own) : null
  for (const choice of [...library].sort(byPrice)) {
    if (best && wires(best) === count) break
    const next = wiredBy(choice)
    if (next && (!best || wires(best) < wires(next))) best = next
  }
  return best
}

const wires = ({ strings }: Wired) => strings.in_series * strings.in_parallel

function byPrice(a: ControllerChoice, b: ControllerChoice): number {
  const of = ({ controller }: ControllerChoice) => controller.record.price.amount?.value ?? Infinity
  const [p, q] = [of(a), of(b)]
  return p === q ? (a.id < b.id ? -1 : 1) : p < q ? -1 : 1
}

/** Controllers that take exactly these strings. */
export const takersOf = (
  takes: Takes,
  { in_series: series, in_parallel: parallel }: Pick<Strings, 'in_series' | 'in_parallel'>,
  library: readonly ControllerChoice[],
): readonly ControllerChoice[] =>
  library.filter((choice) => takes(choice).some((wiring) => wiring.series === series && parallel <= wiring.most))

/** Most panels first, then a margin of 5 % in the cold (common practice, no source), then few strings. */
function mostWired(known: readonly Wiring[], count: number, choice: ControllerChoice): Wired | null {
  const highest = choice.controller.record.input.max_voltage?.value ?? Infinity
  const wirings = known
    .map(({ series, cold, most }) => ({
      series,
      parallel: Math.min(most, Math.floor(count / series)),
      tight: Number(cold > 0.95 * highest),
    }))
    .filter(({ parallel }) => parallel >= 1)
    .sort((a, b) => b.series * b.parallel - a.series * a.parallel || a.tight - b.tight || a.parallel - b.parallel)
  const [first] = wirings
  if (!first) return null
  return { strings: { in_series: first.series, in_parallel: first.parallel, controller: choice.id }, choice }
}

/** So many in series, their open-circuit voltage in the cold [V], and the most such strings. */
interface Wiring {
  readonly series: number
  readonly cold: number
  readonly most: number
}

/** How many in series a controller takes, and the most such strings. */
function wiringsOf(
  target: Target,
  candidate: Candidate,
  figures: Pick<ArrayFigures, 'voc_cold_v' | 'vmp_hot_v' | 'isc_design_a'>,
  choice: ControllerChoice,
): readonly Wiring[] {
  const one = laidArray(target, candidate, [1, 1], choice)
  const { input, output, type } = choice.controller.record
  // one that only switches passes the panels' whole current
  const limit = input.max_short_circuit_current ?? (type?.value === 'pwm' ? output.max_current : undefined)
  const most = limit && figures.isc_design_a ? Math.floor(limit.value / figures.isc_design_a) : Infinity
  return wiringsThatWork({ ...target.system, arrays: [one] }, one, figures).map(({ series, cold }) => ({
    series,
    cold,
    most,
  }))
}
