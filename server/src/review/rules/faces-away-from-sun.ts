import { short } from '../../rules/band.ts'
import { energyOf, facingOf } from '../sun.ts'
import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const facesAwayFromSun: ReviewRule = {
  id: 'faces-away-from-sun',
  severity: 'information',
  reason: 'A steep plane turned from the midday sun gives little; often 0 was typed where 180 is south.',
  source: 'hours of the year; a fifth less than level is common practice, no source',

  check(system) {
    return system.system.surfaces.flatMap((surface) => {
      const { tilt, azimuth } = surface
      const panels = system.arrays.flatMap((array) => array.panels).find((one) => one.surface === surface)
      if (!panels || !tilt || !azimuth) return []
      const as = (facing: { tilt: number; azimuth: number }) => total(energyOf(system, panels, null, facing)?.months)
      const [own, level] = [as(facingOf(panels, system)), as({ tilt: 0, azimuth: azimuth.value })]
      if (own === null || level === null || 0.8 * level <= own) return []
      return [
        {
          message: `Tilted ${said(tilt)} to ${said(azimuth)} (180 deg is south) a panel gives ${short(100 * (1 - own / level))} % less in a year than lying flat`,
          suspects: [azimuth, tilt] as const,
        },
      ]
    })
  },
}

const total = (months: readonly number[] | undefined): number | null =>
  months ? months.reduce((sum, month) => sum + month, 0) : null
