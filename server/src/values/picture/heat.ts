import { installedNoctRise } from '../../physics/mounting.ts'
import type { Panel } from '../../records/records.generated.ts'
import { cellTemperatureHot } from '../cell-temperature-hot.ts'
import { derive } from '../derived.ts'
import { gamma, pmax } from '../inputs.ts'
import { pmaxHot } from '../pmax-hot.ts'
import { mountingOf, type Mounting, type Site } from '../site.ts'

/** Power in full sun against the temperature of the cells, and where each mounting brings them on a hot day. */
export interface Heat {
  readonly pmax_w: number
  /** Relative coefficient of Pmax [1/K]. */
  readonly coefficient: number
  readonly pointer: string
  readonly mountings: readonly MountedPower[]
}

export interface MountedPower {
  readonly mounting: Mounting
  readonly cell_temperature_c: number
  readonly pmax_w: number
  /** Whether it is the mounting that counts for the panel. */
  readonly own: boolean
}

export function heatOf(panel: Panel, site: Site): Heat | null {
  const [power, coefficient] = [pmax.find(panel, site), gamma.find(panel, site)]
  if (!power || !coefficient) return null
  const mountings = Object.keys(installedNoctRise) as Mounting[]
  return {
    pmax_w: power.value,
    coefficient: coefficient.value,
    pointer: '/temperature_coefficients/pmax',
    mountings: mountings.flatMap((mounting) => {
      const here = { ...site, mounting }
      const [cell, left] = [derive(cellTemperatureHot, panel, here).value, derive(pmaxHot, panel, here).value]
      const own = mounting === mountingOf(panel, site)
      return cell === null || left === null ? [] : [{ mounting, cell_temperature_c: cell, pmax_w: left, own }]
    }),
  }
}
