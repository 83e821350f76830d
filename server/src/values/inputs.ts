import { formatIn } from '../quantities/format.ts'
import type { Field, Measure } from '../records/field.ts'
import type { Panel } from '../records/records.generated.ts'
import type { Input } from './derived.ts'
import { mountingOf } from './site.ts'
import type { InputShown } from './value.ts'
import { assumedNoct, installedNoctRise } from '../physics/mounting.ts'

const shown = (name: string, field: Measure | undefined, unit: string): InputShown | undefined =>
  field && { name, value: field.value, unit, text: field.text, pointer: field.pointer }

/** A rating; one of zero or below is a mistake and is not computed with. */
const measured = (name: string, unit: string, pick: (panel: Panel) => Measure | undefined): Input => ({
  missing: name,
  find(panel) {
    const field = pick(panel)
    return field && field.value > 0 ? shown(name, field, unit) : undefined
  },
})

export const pmax = measured('Pmax', 'W', (p) => p.stc.pmax)
export const voc = measured('Voc', 'V', (p) => p.stc.voc)
export const isc = measured('Isc', 'A', (p) => p.stc.isc)
export const length = measured('length', 'm', (p) => p.size.length)
export const width = measured('width', 'm', (p) => p.size.width)
export const weight = measured('weight', 'kg', (p) => p.weight)
export const frameWeight: Input = { ...measured('frame weight', 'kg', (p) => p.mounting_frame.weight), optional: true }
export const cells: Input = {
  missing: 'cells in series',
  find: ({ cells: { in_series: n } }) =>
    n && { name: 'cells', value: n.value, unit: '1', text: n.text, pointer: n.pointer },
}
export const price: Input = {
  missing: 'price',
  find: ({ price: { amount } }) => shown('price', amount, amount?.quantity.unit ?? ''),
}

/** Relative coefficient of Pmax; an absolute one is divided by Pmax. */
export const gamma = coefficient(
  'Pmax coefficient',
  (p) => p.temperature_coefficients.pmax,
  (p) => p.stc.pmax,
)
/** Relative coefficient of Voc; an absolute one is divided by Voc. */
export const beta = coefficient(
  'Voc coefficient',
  (p) => p.temperature_coefficients.voc,
  (p) => p.stc.voc,
)

function coefficient(
  name: string,
  pick: (p: Panel) => Measure | undefined,
  base: (p: Panel) => Field | undefined,
): Input {
  return {
    missing: name,
    find(panel) {
      const field = pick(panel)
      const value = relative(field, base(panel))
      return field && value !== undefined
        ? { name, value, unit: '1/K', text: field.text, pointer: field.pointer }
        : undefined
    },
  }
}

/** A coefficient as 1/K, whichever form it was typed in. */
export function relative(coefficient: Measure | undefined, base: Field | undefined): number | undefined {
  if (!coefficient) return undefined
  if (coefficient.quantity.dimension === 'per-kelvin') return coefficient.value
  return base && base.value > 0 ? coefficient.value / base.value : undefined
}

export const hottest: Input = {
  missing: 'hottest air',
  find: (_, site) => ({
    name: 'T hot',
    value: site.hottest,
    unit: 'degC',
    text: formatIn(site.hottest, 'degC'),
    pointer: null,
  }),
}
export const coldest: Input = {
  missing: 'coldest air',
  find: (_, site) => ({
    name: 'T cold',
    value: site.coldest,
    unit: 'degC',
    text: formatIn(site.coldest, 'degC'),
    pointer: null,
  }),
}

/** NOCT as typed, or the median of the open ratings. */
export const noct: Input = {
  missing: 'NOCT',
  find({ noct: { temperature } }) {
    if (temperature) return shown('NOCT', temperature, 'degC')
    return { name: 'NOCT', value: assumedNoct, unit: 'degC', text: `${assumedNoct} °C, assumed`, pointer: null }
  },
}

/** How much warmer than in the open the cells run, as mounted: kelvin at NOCT conditions. */
export const mountingRise: Input = {
  missing: 'mounting',
  find(panel, site) {
    const mounting = mountingOf(panel, site)
    const value = installedNoctRise[mounting]
    const how = mounting === 'canvas' ? 'canvas (an estimate)' : mounting
    return { name: 'X', value, unit: 'K', text: `${value} K, ${how}`, pointer: null }
  },
}
