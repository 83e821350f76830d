import { acPower, continuous, loadCurrent, startingPower } from './bank-current.ts'
import { allChargeCurrent, bankOf, chargeCurrent, leastRating } from './bank.ts'
import { allowable, inside } from './cable-figures.ts'
import { controllersOf, mostPower, sumOf } from './controllers.ts'
import { costOf } from './cost.ts'
import type { Figures } from './figures.ts'
import { lowest } from './lowest.ts'
import { mainPair } from './main-pair.ts'
import type { ResolvedSystem } from './resolved.ts'
import { voltageNeeded } from './rewire.ts'
import { arrayPmax, stringVocHot } from './strings.ts'
import type { Bundle } from '../wording/bundle.ts'
import { sayIn } from '../wording/phrase.ts'

/** A figure beside the limit that it must keep. */
export interface Margin {
  readonly what: string
  readonly value: number
  readonly limit: number
  readonly unit: string
  /** Whether the limit is the least, not the most. */
  readonly atLeast?: true
  /** Whether more does no harm: what exceeds the limit is not used. */
  readonly unused?: true
}

export const isKept = ({ value, limit, atLeast }: Margin): boolean => (atLeast ? value >= limit : value <= limit)

/**
 * Every limit of a system of which both sides are known.
 *
 * @param bundle  for the names of the limits
 */
export function marginsOf(system: ResolvedSystem, figures: Figures, bundle?: Bundle): readonly Margin[] {
  const say = sayIn(bundle)
  return [
    ...ofArrays(system, figures, say),
    ...ofControllers(system, figures, say),
    ...ofBattery(system, say),
    ...ofOrder(system, figures, say),
  ]
}

type Say = ReturnType<typeof sayIn>

type Maybe = Omit<Margin, 'value' | 'limit'> & {
  readonly value: number | null | undefined
  readonly limit: number | null | undefined
}

const known = (rows: readonly Maybe[]): readonly Margin[] =>
  rows.flatMap(({ value, limit, ...row }) =>
    typeof value === 'number' && typeof limit === 'number' && Number.isFinite(limit) ? [{ ...row, value, limit }] : [],
  )

function ofArrays(system: ResolvedSystem, figures: Figures, say: Say): readonly Margin[] {
  return system.arrays.flatMap((array, i) => {
    const own = figures.arrays[i]!
    const needed = voltageNeeded(system, array)
    const { controller, entry, panels } = array
    const starts = controller?.record.input.above_battery ? needed?.start : null
    const seriesFuse = lowest(panels.map(({ panel }) => panel?.record.limits.series_fuse))?.value
    const systemVoltage = lowest(panels.map(({ panel }) => panel?.record.limits.system_voltage))?.value
    return known([
      {
        what: say`${own.id}: cold voltage, controller`,
        value: own.voc_cold_v,
        limit: controller?.record.input.max_voltage?.value,
        unit: 'V',
      },
      { what: say`${own.id}: cold voltage, panels`, value: own.voc_cold_v, limit: systemVoltage, unit: 'V' },
      { what: say`${own.id}: hot voltage, to run`, value: own.vmp_hot_v, limit: needed?.run, unit: 'V', atLeast: true },
      {
        what: say`${own.id}: hot open voltage, to start`,
        value: stringVocHot(system, array),
        limit: starts,
        unit: 'V',
        atLeast: true,
      },
      { what: say`${own.id}: design current, cable`, value: own.isc_design_a, limit: own.cable?.ampacity_a, unit: 'A' },
      {
        what: say`${own.id}: design current, disconnect`,
        value: own.isc_design_a,
        limit: entry.disconnect.current?.value,
        unit: 'A',
      },
      {
        what: say`${own.id}: cold voltage, disconnect`,
        value: own.voc_cold_v,
        limit: entry.disconnect.voltage?.value,
        unit: 'V',
      },
      { what: say`${own.id}: string fuse, panels`, value: entry.string_fuse?.value, limit: seriesFuse, unit: 'A' },
    ])
  })
}

function ofControllers(system: ResolvedSystem, figures: Figures, say: Say): readonly Margin[] {
  return controllersOf(system).flatMap((group) => {
    const { input } = group.controller?.record ?? {}
    const bank = bankOf(system)
    const charge = bank && chargeCurrent(group, bank)
    const design = charge === null ? null : continuous * charge
    const { fuse, cable } = group.arrays[0].entry.output
    const iz = cable.size ? allowable(cable, cable.size.value, inside) : null
    const name = group.indices.map((i) => figures.arrays[i]!.id).reduce((all, one) => say`${all} and ${one}`)
    const isc = sumOf(group, (_, i) => figures.arrays[i]!.isc_design_a)
    return known([
      {
        what: say`${name}: design current, controller`,
        value: isc,
        limit: input?.max_short_circuit_current?.value,
        unit: 'A',
      },
      {
        what: say`${name}: panels, controller`,
        value: sumOf(group, arrayPmax),
        limit: mostPower(group, bank?.voltage),
        unit: 'W',
        unused: true,
      },
      { what: say`${name}: charge design current, output fuse`, value: design, limit: fuse?.value, unit: 'A' },
      { what: say`${name}: output fuse, output cable`, value: fuse?.value, limit: iz, unit: 'A' },
      { what: say`${name}: charge design current, output cable`, value: design, limit: iz, unit: 'A' },
    ])
  })
}

function ofBattery(system: ResolvedSystem, say: Say): readonly Margin[] {
  const bank = bankOf(system)
  const pair = mainPair(system)
  if (!bank || !pair) return []
  const { fuse, cable, each_fuse: each, in_parallel: parallel, interrupting_rating: rating } = system.system.battery
  const { power, surge } = system.system.inverter
  const iz = cable.size ? allowable(cable, cable.size.value, inside) : null
  const strings = parallel?.value ?? 1
  return known([
    { what: say`battery: design current, fuse`, value: pair.design, limit: fuse?.value, unit: 'A' },
    { what: say`battery: fuse, cable`, value: fuse?.value, limit: iz, unit: 'A' },
    { what: say`battery: design current, cable`, value: pair.design, limit: iz, unit: 'A' },
    {
      what: say`battery: design current, each fuse`,
      value: strings < 2 ? null : pair.design / strings,
      limit: each?.value,
      unit: 'A',
    },
    {
      what: say`battery: interrupting rating of the fuse`,
      value: rating?.value,
      limit: leastRating(bank),
      unit: 'A',
      atLeast: true,
    },
    { what: say`battery: charge current`, value: allChargeCurrent(system, bank), limit: bank.mostIn, unit: 'A' },
    { what: say`battery: load current`, value: loadCurrent(system, bank).amps, limit: bank.mostOut, unit: 'A' },
    { what: say`inverter: loads at once`, value: acPower(system), limit: power?.value, unit: 'W' },
    { what: say`inverter: while a motor starts`, value: startingPower(system)?.watts, limit: surge?.value, unit: 'W' },
  ])
}

/** What the customer set. */
function ofOrder(system: ResolvedSystem, figures: Figures, say: Say): readonly Margin[] {
  const { weight, budget } = system.system.limits
  const kilograms = figures.arrays.reduce<number | null>(
    (sum, { weight_kg: kg }) => (sum === null || kg === null ? null : sum + kg),
    0,
  )
  const currency = budget?.quantity.unit ?? ''
  const cost = costOf(system, currency)
  // what lacks prices is known only to be too much
  const isWhole = cost.missing.length === 0 || (budget && budget.value < cost.amount)
  return known([
    { what: say`weight of the panels`, value: kilograms, limit: weight?.value, unit: 'kg' },
    { what: say`price`, value: isWhole ? cost.amount : null, limit: budget?.value, unit: currency },
  ])
}
