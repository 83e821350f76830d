import { celsius } from '../findings/message.ts'
import { bankOf, inverterEfficiency } from './bank.ts'
import { allowable, inside, onRoof } from './cable-figures.ts'
import { shapeOf } from './fit.ts'
import { vocAt } from './panel-at.ts'
import { loadsAtAnyTime } from './loads.ts'
import { lacksCurve } from './mismatch.ts'
import { notCompared } from './measured/not-compared.ts'
import { notCounted } from './not-counted.ts'
import { yearOf } from './year.ts'
import type { Bundle } from '../wording/bundle.ts'
import { joined, phrase, phraseInWords, type Phrase } from '../wording/phrase.ts'
import { isMeanOnly } from './in-watts.ts'
import { said } from './said.ts'
import type { ResolvedArray, ResolvedSystem } from './resolved.ts'

/** What could not be looked at, and what is missing for it, in sentences; in those of a bundle where it has them. */
export function notChecked(system: ResolvedSystem, bundle?: Bundle): readonly string[] {
  const all = [
    ...site(system),
    ...system.arrays.flatMap((array) => [...ofArray(system, array)]),
    ...panels(system),
    ...surfaces(system),
    ...battery(system),
    ...notCounted(system),
    ...notCompared(system),
  ]
  return [...new Set(all.map((one) => phraseInWords(one, bundle)))]
}

function* site(system: ResolvedSystem): Generator<Phrase> {
  if (system.coldest.from === 'assumed')
    yield phrase`The coldest air is not known; ${celsius(system.coldest.value)} is assumed for the cold-day voltage.`
  if (system.hottest.from === 'assumed')
    yield phrase`The hottest air is not known; ${celsius(system.hottest.value)} is assumed.`
  if (system.climate?.record.hourly && !system.weather)
    yield phrase`Hourly weather: ${system.climate.record.hourly.text} could not be used; the days are made from the monthly means.`
  if (system.climate && !system.weather)
    yield phrase`Dull spells longer than monthly means can show: name an hourly file (\`hourly\` in the climate) to include them.`
  if (!system.climate) yield phrase`Yield, balance and state of charge through the year: no climate.`
  else if (!yearOf(system))
    yield phrase`Yield, balance and state of charge through the year: the climate lacks months or latitude, or a panel its Pmax coefficient.`
}

function* ofArray({ battery }: ResolvedSystem, { entry, panels, controller }: ResolvedArray): Generator<Phrase> {
  const id = entry.id?.value ?? 'array'
  const { input, output, type } = controller?.record ?? {}
  if (!controller) yield phrase`${id}: voltage and current against the controller: no controller record.`
  else {
    if (!type)
      yield phrase`${id}: hot-day voltage against the controller: the record does not say whether it is mppt or pwm.`
    if (!input?.max_voltage)
      yield phrase`${id}: cold-day voltage against the controller: its maximum input voltage is not given.`
    if (!input?.max_short_circuit_current && !(type?.value === 'pwm' && output?.max_current))
      yield phrase`${id}: short-circuit current against the controller: its limit is not given.`
    if (type?.value === 'mppt' && !input?.above_battery)
      yield phrase`${id}: the voltage at which the controller starts is not given; 1 V above the battery is assumed.`
    if (battery && !output?.battery_voltages.length)
      yield phrase`${id}: battery voltage against the controller: its battery voltages are not given.`
    if (!input?.max_power) yield phrase`${id}: power of the panels against the controller: its limit is not given.`
  }
  if (panels.length === 0) yield phrase`${id}: no panels are given, or none can be read, so nothing of it is checked.`
  for (const { entry: own, panel } of panels)
    if (!panel)
      yield phrase`${id}: ${own.panel.id?.value ?? phrase`panel`}: no such panel record, so its string is not checked.`
  if (lacksCurve({ entry, panels }))
    yield phrase`${id}: what its unlike panels lose together: no curve fits the sheet of one of them.`
  const { size, length, insulation } = entry.cable
  if (!size || !length) yield phrase`${id}: voltage drop and heat of the cable: size or length is not given.`
  else if (!insulation) yield phrase`${id}: allowable current of the cable: its insulation rating is not given.`
  else if (allowable(entry.cable, size.value, onRoof) === null)
    yield phrase`${id}: allowable current of the cable: ${said(size)} with ${said(insulation)} insulation is below the table, which begins at 0.75 mm2, 18 AWG and 60 °C.`
}

function* panels({ system, arrays }: ResolvedSystem): Generator<Phrase> {
  for (const { entry, panel, surface } of arrays.flatMap((array) => array.panels)) {
    if (!panel) continue
    const { record } = panel
    const { limits } = record
    const name = record.name?.value ?? entry.panel.id?.value ?? 'a panel'
    const cold = vocAt(record, 0)
    if (!cold) yield phrase`Cold-day voltage: ${name} gives no Voc coefficient.`
    else if (cold.byTable)
      yield phrase`${name} gives no Voc coefficient; its cold-day voltage is by the table of US practice for crystalline silicon.`
    if (!limits.system_voltage) yield phrase`Cold-day voltage against ${name}: its maximum system voltage is not given.`
    yield phrase`Tolerance of Voc, often 3 %: voltages are those that the sheet prints.`
    if (record.bifacial?.value && surface?.mounting?.value !== 'bonded' && surface?.mounting?.value !== 'canvas')
      yield phrase`Rear gain: light on the back of ${name} adds up to about 10 % to its current; controller, fuses and cables are checked without it.`
    if (!limits.series_fuse) yield phrase`Reverse current: ${name} gives no maximum series fuse.`
    if (!limits.operating_temperature) yield phrase`Heat: ${name} gives no operating temperature.`
    if (
      !limits.bend &&
      !limits.bend_radius &&
      surface?.curvature &&
      surface.curvature.value > 0 &&
      record.construction?.value !== 'rigid'
    )
      yield phrase`Bend: ${name} gives no limit, and ${surface.id?.value ?? phrase`its surface`} bends by ${said(surface.curvature)}.`
    if (!record.weight && !system.limits.weight) yield phrase`Weight: ${name} gives none.`
    if (record.warranty.exclusions.length === 0) yield phrase`Warranty: what ${name} excludes is not recorded.`
  }
}

function* surfaces({ system, arrays }: ResolvedSystem): Generator<Phrase> {
  const tilted = system.surfaces.filter(({ tilt }) => (tilt?.value ?? 0) > 0).length
  if (system.site.swings?.value && tilted > 0)
    yield phrase`Tilt of surfaces: as it swings, panels count as level, which every direction in turn comes to about.`
  for (const surface of system.surfaces) {
    const id = surface.id?.value ?? 'surface'
    if (!shapeOf(surface)) yield phrase`${id}: whether the panels fit: its size is not given.`
    if (!surface.mounting) yield phrase`${id}: how panels are mounted is not given; they count as mounted as usual.`
    if (surface.tilt && surface.tilt.value > 0 && !surface.azimuth && !system.site.swings?.value)
      yield phrase`${id}: which way it faces is not given; it counts as facing the midday sun.`
  }
  if (arrays.length > 0)
    yield phrase`Shade on single cells: a rope on one cell takes a whole string of cells; \`shading\` is an even share.`
  const unplaced = arrays.flatMap(({ panels }) => panels).filter(({ entry }) => !entry.surface)
  if (unplaced.length > 0)
    yield phrase`Fit, heat and tilt of panels for which no surface is named; they count as flat and mounted as usual.`
}

function* battery(resolved: ResolvedSystem): Generator<Phrase> {
  const { battery: own } = resolved.system
  if (!resolved.battery) yield phrase`Battery, autonomy and charge currents: no battery record.`
  else if (!bankOf(resolved))
    yield phrase`Battery, autonomy and charge currents: chemistry, voltage or capacity is not given.`
  else {
    const { charge, discharge } = resolved.battery.record
    if (!charge.max_current)
      yield phrase`Charge current: the battery gives no limit; what is usual for its chemistry counts.`
    if (!discharge.max_current) yield phrase`Load current against the battery: its limit is not given.`
  }
  const { place, kept_above: kept } = own
  if (resolved.battery && !place && !kept)
    yield phrase`How cold the battery gets: where it is kept is not given; it counts as outside.`
  else if (place?.value === 'inside' && !kept)
    yield phrase`How cold the battery gets: above what the place inside is kept is not given; it counts as the mean of the day outside.`
  if (resolved.battery && bankOf(resolved)?.lithium)
    for (const { name, kind } of resolved.system.other_sources)
      if (kind?.value === 'alternator')
        yield phrase`Heat of ${name?.text ?? phrase`the alternator`}: straight on a lithium bank an alternator gives its most for hours, which many do not stand; a DC-DC charger limits it.`
  if (!own.cable.size || !own.cable.length) yield phrase`Battery cable: size or length is not given.`
  else if (!own.cable.insulation)
    yield phrase`Allowable current of the battery cable: its insulation rating is not given.`
  else if (allowable(own.cable, own.cable.size.value, inside) === null)
    yield phrase`Allowable current of the battery cable: its size or insulation is below the table, which begins at 0.75 mm2, 18 AWG and 60 °C.`
  yield* currents(resolved)
  const { loads, inverter } = resolved.system
  if (loads.some(({ supply }) => supply?.value === 'ac') && !inverter.efficiency)
    yield phrase`Losses of the inverter: its efficiency is not given; ${100 * inverterEfficiency(undefined)} % is assumed.`
  const anyTime = loadsAtAnyTime(resolved).map(({ name }) => name?.text ?? 'a load')
  if (anyTime.length > 0)
    yield anyTime.length > 1
      ? phrase`When on the day ${joined(anyTime)} run: not given; spread over all of it, and more goes unmet where loads run in the evening.`
      : phrase`When on the day ${anyTime[0]} runs: not given; spread over all of it, and more goes unmet where loads run in the evening.`
  if (loads.length === 0) yield phrase`Balance of the year: no loads are given.`
}

function* currents({ system, battery: own }: ResolvedSystem): Generator<Phrase> {
  const { battery, inverter, loads, arrays } = system
  if (!battery.interrupting_rating) yield phrase`Interrupting rating of the main fuse: not given.`
  yield phrase`Voltage rating of fuses, and their types: not part of the description.`
  if ((battery.in_parallel?.value ?? 1) > 1 && !battery.each_fuse)
    yield phrase`A fuse at each battery in parallel: none is given; when one fails, the others feed it.`
  if (own)
    yield phrase`Capacity in the cold: a battery gives less of it, lead-acid about 1 % less per degree below 25 °C.`
  if (loads.some(({ supply }) => supply?.value === 'ac')) {
    if (!inverter.power) yield phrase`Loads against the inverter: its power is not given.`
    if (!inverter.surge || !loads.some(({ surge }) => surge))
      yield phrase`Motors as they start against the surge of the inverter: not given.`
  }
  const mean = loads.filter(isMeanOnly).flatMap(({ name }) => name?.text ?? [])
  if (mean.length > 0)
    yield mean.length > 1
      ? phrase`What ${joined(mean)} draw at once: only the day is given.`
      : phrase`What ${mean[0]} draws at once: only the day is given.`
  // arrays that lack the same share a line
  const lacking = new Map<string, { readonly missing: readonly Phrase[]; readonly names: string[] }>()
  for (const { id, disconnect, output } of arrays) {
    const missing = [
      ...(disconnect.current && disconnect.voltage ? [] : [phrase`disconnect`]),
      ...(output.fuse ? [] : [phrase`output fuse`]),
      ...(output.cable.size && output.cable.insulation ? [] : [phrase`output cable`]),
    ]
    const key = missing.map(({ template }) => template).join()
    if (!lacking.has(key)) lacking.set(key, { missing, names: [] })
    lacking.get(key)!.names.push(id?.text ?? 'array')
  }
  for (const { missing, names } of lacking.values())
    if (missing.length > 0) yield phrase`${joined(names)}: ${joined(missing)} not given.`
}
