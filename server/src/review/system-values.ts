import { formatIn } from '../quantities/format.ts'
import type { Field } from '../records/field.ts'
import type { InputShown, Value } from '../values/value.ts'
import type { Figures } from './figures.ts'
import type { ResolvedSystem } from './resolved.ts'

/** The figures of a system as values that explain themselves, each at the line that it follows from. */
export function systemValues(system: ResolvedSystem, figures: Figures): readonly Value[] {
  return [...system.arrays.flatMap((_, i) => ofArray(system, figures, i)), ...ofBattery(system, figures)]
}

function ofArray({ arrays, coldest, hottest }: ResolvedSystem, figures: Figures, i: number): readonly Value[] {
  const { entry } = arrays[i]!
  const own = figures.arrays[i]!
  const { in_series: series, in_parallel: parallel } = entry.wiring
  const cold = { name: 'T cold', value: coldest.value, unit: 'degC', text: `${coldest.value} °C`, pointer: null }
  const hot = { name: 'T hot', value: hottest.value, unit: 'degC', text: `${hottest.value} °C`, pointer: null }
  const counts = entry.panels.flatMap(({ count }) => shown('panels', count))
  const wires = [...shown('cable', entry.cable.size), ...shown('one way', entry.cable.length)]
  const wiring = [...shown('in series', series), ...shown('in parallel', parallel)]
  const id = `arrays/${i}`
  return [
    value(`${id}/voc_cold`, 'Voc of the string on the coldest morning', own.voc_cold_v, 'V', {
      formula: 'sum over the string of Voc x (1 + Voc coefficient x (T cold - 25 °C))',
      source: 'coefficient method of US and IEC practice (NEC 690.7, IEC 62548; from memory)',
      inputs: [cold, ...shown('in series', series)],
      at: series,
    }),
    value(`${id}/vmp_hot`, 'Vmp of the string on a hot day', own.vmp_hot_v, 'V', {
      formula: 'sum over the string of Vmp x (1 + Vmp coefficient x (hot cell - 25 °C))',
      source: 'coefficients of the sheet, cell temperature by Ross 1981',
      inputs: [hot, ...shown('in series', series)],
      at: series,
    }),
    value(`${id}/pmax_hot`, 'power of the array on a hot day', own.pmax_hot_w, 'W', {
      formula: 'sum of Pmax x (1 + Pmax coefficient x (hot cell - 25 °C))',
      source: 'coefficients of the sheet, cell temperature by Ross 1981',
      inputs: [hot, ...counts],
      at: entry.panels[0]?.count,
    }),
    value(`${id}/isc_design`, 'design current of the array', own.isc_design_a, 'A', {
      formula: '1.25 x Isc of all strings',
      source: 'US National Electrical Code 690.8 (as quoted by trade articles)',
      inputs: wiring,
      at: parallel ?? series,
    }),
    value(`${id}/cable_drop`, 'voltage drop of the array cable', share(own.cable?.drop_pct), '1', {
      formula: '2 x length x resistance x Imp / Vmp, the conductor at 70 °C',
      source: 'IEC 60228',
      inputs: wires,
      at: entry.cable.size,
    }),
    value(`${id}/cable_ampacity`, 'current that the array cable may carry', own.cable?.ampacity_a ?? null, 'A', {
      formula: 'table value x factor of hot air x factor of the bundle; a guide value, the local code decides',
      source: '33 CFR 183.425, table 5, and the heat balance of a conductor',
      inputs: [...wires, ...shown('insulation', entry.cable.insulation)],
      at: entry.cable.size,
    }),
  ]
}

function ofBattery({ system }: ResolvedSystem, { battery: own }: Figures): readonly Value[] {
  const { battery, in_series: series, in_parallel: parallel, autonomy } = system.battery
  const inputs = [...shown('in series', series), ...shown('in parallel', parallel)]
  return [
    value('battery/usable', 'usable energy of the bank', own.usable_wh, 'Wh', {
      formula: 'capacity x nominal voltage x usable depth',
      source: 'the battery record, or what is usual for its chemistry',
      inputs,
      at: parallel ?? battery.id,
    }),
    value('battery/autonomy', 'days without sun or other source', own.autonomy_days, 'days', {
      formula: 'usable energy x discharge efficiency / load of the heaviest month',
      source: 'energy balance',
      inputs,
      at: autonomy ?? battery.id ?? parallel,
    }),
  ]
}

type More = Pick<Value, 'formula' | 'source' | 'inputs'> & { readonly at: Field<unknown> | undefined }

function value(id: string, label: string, number: number | null, unit: string, { at, ...more }: More): Value {
  const missing = number === null ? ['a record or field that it needs'] : []
  const text = number === null ? 'not known' : formatIn(number, unit, 3)
  return { id, label, value: number, unit, text, missing, uncertainty: null, at: at?.pointer ?? '', ...more }
}

const shown = (name: string, field: Field | undefined): InputShown[] =>
  field ? [{ name, value: field.value, unit: '', text: field.text, pointer: field.pointer }] : []

const share = (percent: number | null | undefined): number | null =>
  percent === null || percent === undefined ? null : percent / 100
