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

/** Every limit of a system of which both sides are known. */
export function marginsOf(system: ResolvedSystem, figures: Figures): readonly Margin[] {
  return [
    ...ofArrays(system, figures),
    ...ofControllers(system, figures),
    ...ofBattery(system),
    ...ofOrder(system, figures),
  ]
}

type Maybe = Omit<Margin, 'value' | 'limit'> & {
  readonly value: number | null | undefined
  readonly limit: number | null | undefined
}

const known = (rows: readonly Maybe[]): readonly Margin[] =>
  rows.flatMap(({ value, limit, ...row }) =>
    typeof value === 'number' && typeof limit === 'number' && Number.isFinite(limit) ? [{ ...row, value, limit }] : [],
  )

function ofArrays(system: ResolvedSystem, figures: Figures): readonly Margin[] {
  return system.arrays.flatMap((array, i) => {
    const own = figures.arrays[i]!
    const needed = voltageNeeded(system, array)
    const { controller, entry, panels } = array
    const starts = controller?.record.input.above_battery ? needed?.start : null
    const seriesFuse = lowest(panels.map(({ panel }) => panel?.record.limits.series_fuse))?.value
    const systemVoltage = lowest(panels.map(({ panel }) => panel?.record.limits.system_voltage))?.value
    return known([
      {
        what: `${own.id}: cold voltage, controller`,
        value: own.voc_cold_v,
        limit: controller?.record.input.max_voltage?.value,
        unit: 'V',
      },
      { what: `${own.id}: cold voltage, panels`, value: own.voc_cold_v, limit: systemVoltage, unit: 'V' },
      { what: `${own.id}: hot voltage, to run`, value: own.vmp_hot_v, limit: needed?.run, unit: 'V', atLeast: true },
      {
        what: `${own.id}: hot open voltage, to start`,
        value: stringVocHot(system, array),
        limit: starts,
        unit: 'V',
        atLeast: true,
      },
      { what: `${own.id}: design current, cable`, value: own.isc_design_a, limit: own.cable?.ampacity_a, unit: 'A' },
      {
        what: `${own.id}: design current, disconnect`,
        value: own.isc_design_a,
        limit: entry.disconnect.current?.value,
        unit: 'A',
      },
      {
        what: `${own.id}: cold voltage, disconnect`,
        value: own.voc_cold_v,
        limit: entry.disconnect.voltage?.value,
        unit: 'V',
      },
      { what: `${own.id}: string fuse, panels`, value: entry.string_fuse?.value, limit: seriesFuse, unit: 'A' },
    ])
  })
}

function ofControllers(system: ResolvedSystem, figures: Figures): readonly Margin[] {
  return controllersOf(system).flatMap((group) => {
    const { input } = group.controller?.record ?? {}
    const bank = bankOf(system)
    const charge = bank && chargeCurrent(group, bank)
    const design = charge === null ? null : continuous * charge
    const { fuse, cable } = group.arrays[0].entry.output
    const iz = cable.size ? allowable(cable, cable.size.value, inside) : null
    const name = group.arrays.map((array) => figures.arrays[system.arrays.indexOf(array)]!.id).join(' and ')
    const isc = sumOf(group, (array) => figures.arrays[system.arrays.indexOf(array)]!.isc_design_a)
    return known([
      {
        what: `${name}: design current, controller`,
        value: isc,
        limit: input?.max_short_circuit_current?.value,
        unit: 'A',
      },
      {
        what: `${name}: panels, controller`,
        value: sumOf(group, arrayPmax),
        limit: mostPower(group, bank?.voltage),
        unit: 'W',
        unused: true,
      },
      { what: `${name}: charge design current, output fuse`, value: design, limit: fuse?.value, unit: 'A' },
      { what: `${name}: output fuse, output cable`, value: fuse?.value, limit: iz, unit: 'A' },
      { what: `${name}: charge design current, output cable`, value: design, limit: iz, unit: 'A' },
    ])
  })
}

function ofBattery(system: ResolvedSystem): readonly Margin[] {
  const bank = bankOf(system)
  const pair = mainPair(system)
  if (!bank || !pair) return []
  const { fuse, cable, each_fuse: each, in_parallel: parallel, interrupting_rating: rating } = system.system.battery
  const { power, surge } = system.system.inverter
  const iz = cable.size ? allowable(cable, cable.size.value, inside) : null
  const strings = parallel?.value ?? 1
  return known([
    { what: 'battery: design current, fuse', value: pair.design, limit: fuse?.value, unit: 'A' },
    { what: 'battery: fuse, cable', value: fuse?.value, limit: iz, unit: 'A' },
    { what: 'battery: design current, cable', value: pair.design, limit: iz, unit: 'A' },
    {
      what: 'battery: design current, each fuse',
      value: strings < 2 ? null : pair.design / strings,
      limit: each?.value,
      unit: 'A',
    },
    {
      what: 'battery: interrupting rating of the fuse',
      value: rating?.value,
      limit: leastRating(bank),
      unit: 'A',
      atLeast: true,
    },
    { what: 'battery: charge current', value: allChargeCurrent(system, bank), limit: bank.mostIn, unit: 'A' },
    { what: 'battery: load current', value: loadCurrent(system, bank).amps, limit: bank.mostOut, unit: 'A' },
    { what: 'inverter: loads at once', value: acPower(system), limit: power?.value, unit: 'W' },
    { what: 'inverter: while a motor starts', value: startingPower(system)?.watts, limit: surge?.value, unit: 'W' },
  ])
}

/** What the customer set. */
function ofOrder(system: ResolvedSystem, figures: Figures): readonly Margin[] {
  const { weight, budget } = system.system.limits
  const kilograms = figures.arrays.reduce<number | null>(
    (sum, { weight_kg: kg }) => (sum === null || kg === null ? null : sum + kg),
    0,
  )
  const currency = budget?.quantity.unit ?? ''
  return known([
    { what: 'weight of the panels', value: kilograms, limit: weight?.value, unit: 'kg' },
    { what: 'price', value: budget && costOf(system, currency).amount, limit: budget?.value, unit: currency },
  ])
}
