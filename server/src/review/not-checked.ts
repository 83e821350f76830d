import { bankOf } from './bank.ts'
import { allowable, inside, onRoof } from './cable-figures.ts'
import { shapeOf } from './fit.ts'
import { vocAt } from './panel-at.ts'
import { yearOf } from './year.ts'
import type { ResolvedArray, ResolvedSystem } from './resolved.ts'

/** What could not be looked at, and what is missing for it, in sentences. */
export function notChecked(system: ResolvedSystem): readonly string[] {
  return [
    ...site(system),
    ...system.arrays.flatMap((array) => [...ofArray(array)]),
    ...surfaces(system),
    ...battery(system),
  ]
}

function* site(system: ResolvedSystem): Generator<string> {
  if (system.coldest.from === 'assumed')
    yield `The coldest air is not known; ${system.coldest.value} °C is assumed for the cold-day voltage.`
  if (system.hottest.from === 'assumed') yield `The hottest air is not known; ${system.hottest.value} °C is assumed.`
  if (!system.climate) yield 'Yield, balance and state of charge through the year: no climate.'
  else if (!yearOf(system))
    yield 'Yield, balance and state of charge through the year: the climate lacks months or latitude, or a panel its Pmax coefficient.'
}

function* ofArray({ entry, panels, controller }: ResolvedArray): Generator<string> {
  const id = entry.id?.value ?? 'array'
  const limits = controller?.record.input
  if (!controller) yield `${id}: voltage and current against the controller: no controller record.`
  else {
    if (!limits?.max_voltage)
      yield `${id}: cold-day voltage against the controller: its maximum input voltage is not given.`
    if (!limits?.max_short_circuit_current)
      yield `${id}: short-circuit current against the controller: its limit is not given.`
  }
  for (const { entry: own, panel } of panels) {
    if (!panel) {
      yield `${id}: ${own.panel.id?.value ?? 'panel'}: no such panel record, so its string is not checked.`
      continue
    }
    const { record } = panel
    const name = record.name?.value ?? own.panel.id?.value ?? 'panel'
    const cold = vocAt(record, 0)
    if (!cold) yield `${id}: cold-day voltage: ${name} gives no Voc coefficient.`
    else if (cold.byTable)
      yield `${id}: ${name} gives no Voc coefficient; its cold-day voltage is by the table of US practice for crystalline silicon.`
    if (!record.limits.system_voltage)
      yield `${id}: cold-day voltage against ${name}: its maximum system voltage is not given.`
    if (!record.limits.series_fuse) yield `${id}: reverse current: ${name} gives no maximum series fuse.`
    if (!record.weight) yield `${id}: weight: ${name} gives none.`
  }
  const { size, length, insulation } = entry.cable
  if (!size || !length) yield `${id}: voltage drop and heat of the cable: size or length is not given.`
  else if (!insulation) yield `${id}: allowable current of the cable: its insulation rating is not given.`
  else if (allowable(entry.cable, size.value, onRoof) === null)
    yield `${id}: allowable current of the cable: ${size.text} with ${insulation.text} insulation is below the table, which begins at 0.75 mm2, 18 AWG and 60 °C.`
}

function* surfaces({ system, arrays }: ResolvedSystem): Generator<string> {
  for (const surface of system.surfaces)
    if (!shapeOf(surface)) yield `${surface.id?.value ?? 'surface'}: whether the panels fit: its size is not given.`
  const unplaced = arrays.flatMap(({ panels }) => panels).filter(({ entry }) => !entry.surface)
  if (unplaced.length > 0)
    yield 'Fit, heat and tilt of panels for which no surface is named; they count as flat and mounted as usual.'
}

function* battery(resolved: ResolvedSystem): Generator<string> {
  const { battery: own } = resolved.system
  if (!resolved.battery) yield 'Battery, autonomy and charge currents: no battery record.'
  else if (!bankOf(resolved))
    yield 'Battery, autonomy and charge currents: chemistry, voltage or capacity is not given.'
  else if (!resolved.battery.record.charge.max_current)
    yield 'Charge current against the battery: its limit is not given.'
  if (!own.cable.size || !own.cable.length) yield 'Battery cable: size or length is not given.'
  else if (!own.cable.insulation) yield 'Allowable current of the battery cable: its insulation rating is not given.'
  else if (allowable(own.cable, own.cable.size.value, inside) === null)
    yield 'Allowable current of the battery cable: its size or insulation is below the table, which begins at 0.75 mm2, 18 AWG and 60 °C.'
  yield 'Voltage rating and breaking capacity of fuses and switches: not part of the description.'
  if (resolved.system.loads.length === 0) yield 'Balance of the year: no loads are given.'
}
