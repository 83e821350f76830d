import { allChargeCurrent, bankOf } from '../bank.ts'
import { batteryCable } from '../battery-figures.ts'
import { controllersOf } from '../controllers.ts'
import type { Figures } from '../figures.ts'
import type { Cable, ResolvedArray, ResolvedSystem } from '../resolved.ts'
import { countOf } from '../strings.ts'
import { chargeVoltage } from '../../values/chemistry.ts'
import type { Bundle } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'

/** The wires of a system from the panels to the loads, as a one-line diagram and a wiring table show them. */
export interface Wiring {
  readonly arrays: readonly WiredArray[]
  readonly controllers: readonly WiredController[]
  readonly battery: WiredBattery
  readonly inverter: { readonly pointer: string; readonly text: string } | null
  /** What runs on the battery's own voltage, on the inverter's, and what charges beside the panels. */
  readonly direct: readonly Named[]
  readonly inverted: readonly Named[]
  readonly sources: readonly Named[]
}

/** A part with its field and what is written at it. */
export interface Named {
  readonly pointer: string
  readonly name: string
}

export interface WiredArray {
  readonly id: string
  readonly pointer: string
  readonly panels: readonly (Named & { readonly count: number })[]
  readonly in_series: number | null
  readonly in_parallel: number | null
  readonly voc_cold_v: number | null
  readonly vmp_hot_v: number | null
  readonly isc_design_a: number | null
  readonly string_fuse: Named | null
  readonly cable: WiredCable
  readonly disconnect: Named | null
}

/** A controller with the arrays on its input, by their index. */
export interface WiredController {
  readonly pointer: string
  readonly name: string
  readonly type: 'mppt' | 'pwm' | null
  readonly arrays: readonly number[]
  readonly max_voltage_v: number | null
  readonly max_short_circuit_current_a: number | null
  readonly max_output_a: number | null
  readonly output_fuse: Named | null
  readonly output_cable: WiredCable
}

export interface WiredCable {
  readonly pointer: string
  /** Size as typed; null where none is. */
  readonly size: string | null
  readonly length_m: number | null
  readonly drop_pct: number | null
  readonly ampacity_a: number | null
}

export interface WiredBattery {
  readonly pointer: string
  readonly name: string
  readonly in_series: number
  readonly in_parallel: number
  readonly voltage_v: number | null
  /** Of one battery as its sheet has it, for the settings of the controller. */
  readonly chemistry: string | null
  readonly charge_voltage_v: number | null
  readonly float_voltage_v: number | null
  readonly equalise_voltage_v: number | null
  readonly lowest_charge_temperature_c: number | null
  readonly max_charge_current_a: number | null
  readonly charge_current_a: number | null
  readonly fuse: Named | null
  readonly each_fuse: Named | null
  readonly interrupting_rating: Named | null
  readonly cable: WiredCable
}

export function wiringOf(system: ResolvedSystem, figures: Figures, bundle?: Bundle): Wiring {
  const say = sayIn(bundle)
  const { inverter, loads, other_sources: others } = system.system
  const named = (group: 'loads' | 'other_sources', list: readonly { readonly name?: { readonly text: string } }[]) =>
    list.map(({ name }, i) => ({
      pointer: `/${group}/${i}`,
      name: name?.text ?? nameless[group](say),
      entry: list[i]!,
    }))
  const bare = ({ pointer, name }: Named) => ({ pointer, name })
  const all = named('loads', loads)
  const isAc = ({ entry }: (typeof all)[number]) => (entry as (typeof loads)[number]).supply?.value === 'ac'
  const hasInverter = inverter.efficiency ?? inverter.standby ?? inverter.power
  return {
    arrays: system.arrays.map((array, i) => wiredArray(array, figures, i, bundle)),
    controllers: controllersOf(system).map(({ controller, arrays: [first], indices }) => {
      const [i] = indices
      const { input, output, type, name } = controller?.record ?? {}
      return {
        pointer: `/arrays/${i}/controller`,
        name: name?.text ?? first.entry.controller.id?.text ?? say`controller`,
        type: type?.value ?? null,
        arrays: indices,
        max_voltage_v: input?.max_voltage?.value ?? null,
        max_short_circuit_current_a: input?.max_short_circuit_current?.value ?? null,
        max_output_a: output?.max_current?.value ?? null,
        output_fuse: fused(first.entry.output.fuse),
        output_cable: wiredCable(first.entry.output.cable, `/arrays/${i}/output/cable`, null),
      }
    }),
    battery: wiredBattery(system, bundle),
    inverter: hasInverter ? { pointer: '/inverter', text: inverter.power?.text ?? '' } : null,
    direct: all.filter((load) => !isAc(load)).map(bare),
    inverted: all.filter(isAc).map(bare),
    sources: named('other_sources', others).map(bare),
  }
}

/** What stands for a part without a name. */
const nameless: Readonly<Record<'loads' | 'other_sources', (say: ReturnType<typeof sayIn>) => string>> = {
  loads: (say) => say`a load`,
  other_sources: (say) => say`a source`,
}

function wiredArray(
  { entry, panels }: ResolvedArray,
  { arrays }: Figures,
  i: number,
  bundle: Bundle | undefined,
): WiredArray {
  const own = arrays[i]!
  const { current, voltage } = entry.disconnect
  const rated = [current?.text, voltage?.text].flatMap((text) => text ?? []).join(', ')
  return {
    id: own.id,
    pointer: `/arrays/${i}`,
    panels: panels.map((one, p) => ({
      pointer: `/arrays/${i}/panels/${p}`,
      name: one.panel?.record.name?.text ?? one.entry.panel.id?.text ?? sayIn(bundle)`panel`,
      count: countOf(one),
    })),
    in_series: entry.wiring.in_series?.value ?? null,
    in_parallel: entry.wiring.in_parallel?.value ?? null,
    voc_cold_v: own.voc_cold_v,
    vmp_hot_v: own.vmp_hot_v,
    isc_design_a: own.isc_design_a,
    string_fuse: fused(entry.string_fuse),
    cable: wiredCable(entry.cable, `/arrays/${i}/cable`, own.cable),
    disconnect: rated === '' ? null : { pointer: `/arrays/${i}/disconnect`, name: rated },
  }
}

function wiredBattery(system: ResolvedSystem, bundle: Bundle | undefined): WiredBattery {
  const { battery } = system.system
  const record = system.battery?.record
  const bank = bankOf(system)
  const series = battery.in_series?.value ?? 1
  const times = (volts: number | undefined | null) => (volts === undefined || volts === null ? null : volts * series)
  return {
    pointer: '/battery',
    name: record?.name?.text ?? battery.battery.id?.text ?? sayIn(bundle)`battery`,
    in_series: series,
    in_parallel: battery.in_parallel?.value ?? 1,
    voltage_v: bank?.voltage ?? null,
    chemistry: record?.chemistry?.value ?? null,
    charge_voltage_v: record ? times(chargeVoltage(record)) : null,
    float_voltage_v: times(record?.charge.float?.value),
    equalise_voltage_v: times(record?.charge.equalise?.value),
    lowest_charge_temperature_c: record?.charge.lowest_temperature?.value ?? null,
    max_charge_current_a: bank?.mostIn ?? null,
    charge_current_a: bank && allChargeCurrent(system, bank),
    fuse: fused(battery.fuse),
    each_fuse: fused(battery.each_fuse),
    interrupting_rating: fused(battery.interrupting_rating),
    cable: wiredCable(battery.cable, '/battery/cable', batteryCable(system)),
  }
}

const fused = (field: { readonly pointer: string; readonly text: string } | undefined): Named | null =>
  field ? { pointer: field.pointer, name: field.text } : null

const wiredCable = (
  { size, length }: Cable,
  pointer: string,
  figures: { readonly drop_pct: number | null; readonly ampacity_a: number | null } | null,
): WiredCable => ({
  pointer,
  size: size?.text ?? null,
  length_m: length?.value ?? null,
  drop_pct: figures?.drop_pct ?? null,
  ampacity_a: figures?.ampacity_a ?? null,
})
