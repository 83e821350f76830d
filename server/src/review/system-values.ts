import { monthNames } from '../findings/months.ts'
import { formatIn } from '../quantities/format.ts'
import type { Field } from '../records/field.ts'
import type { InputShown, Value } from '../values/value.ts'
import { ampacitySource } from './cable-figures.ts'
import { monthDays } from '../physics/sun.ts'
import type { Figures, MonthFigures } from './figures.ts'
import { measuredValues } from './measured/measured-values.ts'
import type { ResolvedSystem } from './resolved.ts'
import { inCatalogue } from '../wording/phrase.ts'

/** The figures of a system as values that explain themselves, each at the line that it follows from. */
export function systemValues(system: ResolvedSystem, figures: Figures): readonly Value[] {
  return [
    ...system.arrays.flatMap((_, i) => ofArray(system, figures, i)),
    ...ofBattery(system, figures),
    ...ofYear(system, figures),
    ...measuredValues(system),
  ]
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
  const ofRecords = (formula: string) => ({
    formula,
    source: 'the panel records',
    inputs: counts,
    field: entry.panels[0]?.count,
  })
  return [
    value(`${id}/voc_cold`, 'Voc of the string on the coldest morning', own.voc_cold_v, 'V', {
      formula: inCatalogue`sum over the string of Voc x (1 + Voc coefficient x (T cold - 25 °C))`,
      source: 'coefficient method of US and IEC practice (NEC 690.7, IEC 62548; from memory)',
      inputs: [cold, ...shown('in series', series)],
      field: series,
    }),
    value(`${id}/vmp_hot`, 'Vmp of the string on a hot day', own.vmp_hot_v, 'V', {
      formula: inCatalogue`sum over the string of Vmp x (1 + Vmp coefficient x (hot cell - 25 °C))`,
      source: 'coefficients of the sheet, cell temperature by Ross 1981',
      inputs: [hot, ...shown('in series', series)],
      field: series,
    }),
    value(`${id}/pmax_hot`, 'power of the array on a hot day', own.pmax_hot_w, 'W', {
      formula: inCatalogue`sum of Pmax x (1 + Pmax coefficient x (hot cell - 25 °C))`,
      source: 'coefficients of the sheet, cell temperature by Ross 1981',
      inputs: [hot, ...counts],
      field: entry.panels[0]?.count,
    }),
    value(`${id}/pmax_stc`, 'power of the array as printed', own.pmax_stc_w, 'W', ofRecords(inCatalogue`sum of Pmax`)),
    value(
      `${id}/weight`,
      'weight of the panels with their frames',
      own.weight_kg,
      'kg',
      ofRecords(inCatalogue`sum of weight and frame`),
    ),
    value(`${id}/price`, 'price of the panels', own.price?.amount ?? null, own.price?.currency ?? '', {
      ...ofRecords(inCatalogue`sum of the prices`),
      digits: 9,
    }),
    value(`${id}/isc_design`, 'design current of the array', own.isc_design_a, 'A', {
      formula: inCatalogue`1.25 x Isc of all strings`,
      source: 'US National Electrical Code 690.8 (as quoted by trade articles)',
      inputs: wiring,
      field: parallel ?? series,
    }),
    value(`${id}/cable_drop`, 'voltage drop of the array cable', share(own.cable?.drop_pct), '1', {
      digits: 2,
      formula: inCatalogue`2 x length x resistance x Imp / Vmp of a hot day, the conductor at 70 °C`,
      source: 'IEC 60228',
      inputs: wires,
      field: entry.cable.size,
    }),
    value(`${id}/cable_ampacity`, 'current that the array cable may carry', own.cable?.ampacity_a ?? null, 'A', {
      formula: inCatalogue`table value x factor of hot air x factor of the bundle; a guide value, the local code decides`,
      source: ampacitySource,
      inputs: [...wires, ...shown('insulation', entry.cable.insulation)],
      field: entry.cable.size,
    }),
  ]
}

function ofBattery({ system }: ResolvedSystem, { battery: own }: Figures): readonly Value[] {
  const { battery, in_series: series, in_parallel: parallel, autonomy } = system.battery
  const inputs = [...shown('in series', series), ...shown('in parallel', parallel)]
  return [
    value('battery/usable', 'usable energy of the bank', own.usable_wh, 'Wh', {
      formula: inCatalogue`capacity x nominal voltage x usable depth`,
      source: 'the battery record, or what is usual for its chemistry',
      inputs,
      field: parallel ?? battery.id,
    }),
    value('battery/charge_rate', 'charge current of all sources over the capacity', own.charge_rate_c, 'C', {
      formula: inCatalogue`sum of charge currents / ampere-hours`,
      source: 'the records; Pmax x efficiency / nominal voltage for the sun, Isc for a controller that only switches',
      inputs,
      digits: 2,
      field: parallel ?? battery.id,
    }),
    value('battery/autonomy', 'days without sun or other source', own.autonomy_days, 'days', {
      formula: inCatalogue`usable energy x discharge efficiency / load of the heaviest month`,
      source: 'energy balance',
      inputs,
      digits: 2,
      field: autonomy ?? battery.id ?? parallel,
    }),
  ]
}

const simulated =
  'hour-by-hour years around the monthly means, of which this is the usual one, after Aguiar, Collares-Pereira and Conde (1988)'

/** The year, each figure with its twelve months; none without a climate. */
function ofYear({ system, climate }: ResolvedSystem, { months }: Figures): readonly Value[] {
  if (months.length === 0) return []
  const mean = (of: (month: MonthFigures) => number | null) =>
    sum(months, (m) => (of(m) ?? 0) * monthDays[m.month - 1]!) / sum(monthDays, (days) => days)
  const list = (of: (month: MonthFigures) => number | null, unit: string) =>
    `by month, in ${unit}: ${months.map((m) => `${monthNames[m.month - 1]!} ${(of(m) ?? 0).toFixed(0)}`).join(', ')}`
  const sunny = { name: 'climate', value: 0, unit: '', text: climate?.record.name?.text ?? 'as given', pointer: null }
  const more = (formula: string, field: Pick<Field<unknown>, 'pointer'> | undefined) => ({
    formula,
    source: simulated,
    inputs: [sunny],
    digits: 2,
    field,
  })
  const load = mean((m) => m.load_wh_day)
  const isKnown = months.every((m) => m.lowest_soc !== null)
  const percent = (m: MonthFigures) => (m.lowest_soc === null ? null : 100 * m.lowest_soc)
  const bank = system.battery.in_parallel ?? system.battery.battery.id
  return [
    value(
      'year/yield',
      'what the panels give on a mean day of the year',
      mean((m) => m.yield_wh_day),
      'Wh',
      {
        ...more(
          list((m) => m.yield_wh_day, 'Wh a day'),
          system.site.climate.id ?? system.name,
        ),
        digits: 3,
      },
    ),
    value(
      'year/lowest_soc',
      'lowest state of charge of the year',
      isKnown ? Math.min(...months.map((m) => m.lowest_soc ?? 1)) : null,
      '1',
      more(list(percent, '%'), bank),
    ),
    value(
      'year/unmet_load',
      'share of unmet load',
      isKnown && load > 0 ? mean((m) => m.unserved_wh_day) / load : null,
      '1',
      more(
        list((m) => m.unserved_wh_day, 'Wh a day'),
        { pointer: '/loads' },
      ),
    ),
  ]
}

const sum = <T>(parts: readonly T[], of: (part: T) => number) => parts.reduce((total, part) => total + of(part), 0)

type More = Pick<Value, 'formula' | 'source' | 'inputs'> & {
  readonly field: Pick<Field<unknown>, 'pointer'> | undefined
  /** As many as are worth showing; three where nothing is said. */
  readonly digits?: number
}

function value(
  id: string,
  label: string,
  number: number | null,
  unit: string,
  { field, digits = 3, ...more }: More,
): Value {
  const missing = number === null ? ['a record or field that it needs'] : []
  const text = number === null ? 'not known' : formatIn(number, unit, digits)
  return { id, label, value: number, unit, text, missing, uncertainty: null, pointer: field?.pointer ?? '', ...more }
}

const shown = (name: string, field: Field | undefined): InputShown[] =>
  field ? [{ name, value: field.value, unit: '', text: field.text, pointer: field.pointer }] : []

const share = (percent: number | null | undefined): number | null =>
  percent === null || percent === undefined ? null : percent / 100
