import { estimateCoefficients, usualAlpha } from '../../physics/coefficients.ts'
import { deviceOf } from '../../physics/translation/device-of.ts'
import { stc, type Conditions } from '../../physics/translation/point.ts'
import { translate2, type RelativeDevice } from '../../physics/translation/procedure-2.ts'
import { onceEach } from '../../records/once-each.ts'
import type { Panel } from '../../records/records.generated.ts'
import { relative } from '../../values/inputs.ts'
import { panelPower } from '../../values/panel-power.ts'

/** What a panel or a string is expected to give; null where a record says too little. */
export interface Expected {
  readonly voc: number | null
  readonly isc: number | null
  readonly vmp: number | null
  readonly imp: number | null
}

interface Known {
  /** For both ends of the curve. */
  readonly ends: RelativeDevice | null
  /** For the point at maximum power, with the coefficient of Imp. */
  readonly top: RelativeDevice | null
  readonly alpha: number
}

/**
 * Voc, Isc, Vmp and Imp of a panel by its record, translated by procedure 2.
 *
 * @source IEC 60891:2021, see `translate2`
 */
export function panelExpected(panel: Panel, to: Conditions): Expected {
  const { pmax, voc, isc, imp } = panel.stc
  const { ends, top, alpha } = knownOf(panel)
  const best = top && pmax && imp ? translate2({ v: pmax.value / imp.value, i: imp.value }, stc, to, top) : null
  return {
    voc: ends && voc ? translate2({ v: voc.value, i: 0 }, stc, to, ends).v : null,
    isc: isc ? (isc.value * to.irradiance * (1 + alpha * (to.temperature - stc.temperature))) / stc.irradiance : null,
    vmp: best?.v ?? null,
    imp: best?.i ?? null,
  }
}

const knownOf = onceEach(work)

function work(panel: Panel): Known {
  const { pmax, voc, isc, vmp, imp } = panel.stc
  const { temperature_coefficients: c, cells } = panel
  const alpha = relative(c.isc, isc) ?? usualAlpha
  const beta = relative(c.voc, voc)
  if (!voc || beta === undefined) return { ends: null, top: null, alpha }
  const diode = panelPower(panel)?.diode ?? null
  const gamma = relative(c.pmax, pmax) ?? (vmp && estimateCoefficients(voc.value, vmp.value, alpha, beta).gamma)
  const ratings = { voc: voc.value, alpha, beta, cells: cells.in_series?.value ?? null }
  const alphaImp = relative(c.imp, imp) ?? (vmp && estimateCoefficients(voc.value, vmp.value, alpha, beta).alphaImp)
  const top =
    pmax && isc && vmp && imp && gamma !== undefined
      ? deviceOf(
          {
            ...ratings,
            pmax: pmax.value,
            isc: isc.value,
            vmp: vmp.value,
            imp: imp.value,
            gamma,
            alpha: alphaImp ?? alpha,
          },
          diode,
        )
      : null
  const ends = top ? { ...top, alpha } : deviceOf({ ...ratings, pmax: 1, isc: 1, vmp: 1, imp: 1, gamma: 0 }, diode)
  return { ends, top, alpha }
}

/** The curve of what a string gives is that of its panels in series: voltages add up, the weakest current holds. */
export function stringExpected(panels: readonly (Panel | undefined)[], to: Conditions): Expected {
  const each = panels.map((panel) => (panel ? panelExpected(panel, to) : null))
  const all = (of: (one: Expected) => number | null, join: (values: readonly number[]) => number) => {
    const values = each.map((one) => one && of(one))
    return values.length === 0 || values.some((value) => value === null || !Number.isFinite(value))
      ? null
      : join(values as number[])
  }
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)
  const least = (values: readonly number[]) => Math.min(...values)
  return {
    voc: all(({ voc }) => voc, sum),
    isc: all(({ isc }) => isc, least),
    vmp: all(({ vmp }) => vmp, sum),
    imp: all(({ imp }) => imp, least),
  }
}
