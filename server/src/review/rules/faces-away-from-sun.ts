import { estimate } from '../../findings/message.ts'
import { energyOf, facingOf } from '../sun.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const facesAwayFromSun = reviewRule({
  id: 'faces-away-from-sun',
  severity: 'information',
  reason: 'A steep plane turned from the midday sun gives little; often 0 was typed where 180 is south.',
  source: 'hours of the year; a fifth less than level is common practice, no source',
  messages: {
    found: 'Tilted {tilt} to {azimuth} (180 deg is south) a panel gives {share} less in a year than lying flat',
  },

  check(system) {
    return system.system.surfaces.flatMap((surface) => {
      const { tilt, azimuth } = surface
      const panels = system.arrays.flatMap((array) => array.panels).find((one) => one.surface === surface)
      if (!panels || !tilt || !azimuth) return []
      const as = (facing: { tilt: number; azimuth: number }) => total(energyOf(system, panels, facing)?.months)
      const [own, level] = [as(facingOf(panels, system)), as({ tilt: 0, azimuth: azimuth.value })]
      if (own === null || level === null || 0.8 * level <= own) return []
      return [
        {
          say: 'found',
          with: { tilt: said(tilt), azimuth: said(azimuth), share: estimate(100 * (1 - own / level), '%') },
          suspects: [azimuth, tilt] as const,
        },
      ]
    })
  },
})

const total = (months: readonly number[] | undefined): number | null =>
  months ? months.reduce((sum, month) => sum + month, 0) : null
