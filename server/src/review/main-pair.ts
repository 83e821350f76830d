import { allFuseSizes, fuseSizes, nextFuse } from '../physics/fuses.ts'
import { figure, sayFrom, type Catalogue } from '../findings/message.ts'
import type { Proposal } from '../findings/rule.ts'
import { mainDesignCurrent } from './bank-current.ts'
import { allowable, inside } from './cable-figures.ts'
import { nextBatteryCable } from './next-cable.ts'
import type { ResolvedSystem } from './resolved.ts'

export const mainPairPhrases = {
  id: 'main-pair',
  messages: {
    atLeast: 'at least {design}',
    withCable: 'at least {design}, with {cable}',
    between: 'between {design} and {most}',
  },
} as const satisfies Catalogue

const say = sayFrom(mainPairPhrases)

/** The main fuse and cable, which are checked together: what sets one right must not make the other wrong. */
export interface MainPair {
  /** What both must carry [A]. */
  readonly design: number
  /** Allowable current of the cable [A]; null where it is not known. */
  readonly iz: number | null
}

/** Null without a bank. */
export function mainPair(system: ResolvedSystem): MainPair | null {
  const design = mainDesignCurrent(system)
  const { cable } = system.system.battery
  return design === null ? null : { design, iz: cable.size ? allowable(cable, cable.size.value, inside) : null }
}

/** A fuse that carries the design current, with the cable that it needs; nothing where no size does. */
export function fuseThatCarries(system: ResolvedSystem, { design, iz }: MainPair): Proposal | undefined {
  const { fuse } = system.system.battery
  const between = allFuseSizes.find((one) => design <= one && (iz === null || one <= iz))
  const size = nextFuse(fuseSizes.vehicle, design)
  if (!fuse || size === null) return undefined
  if (between !== undefined)
    return {
      field: fuse,
      text: `${iz === null ? size : between} A`,
      why: say({ say: 'atLeast', with: { design: figure(design, 'A') } }),
      certainty: 'guess',
    }
  const cable = nextBatteryCable(system, size)
  if (!cable) return undefined
  return {
    field: fuse,
    text: `${size} A`,
    why: say({ say: 'withCable', with: { design: figure(design, 'A'), cable: cable.text } }),
    certainty: 'guess',
    also: [{ field: cable.field, text: cable.text }],
  }
}

/** A cable for the design current and for the fuse, as it is and as it should be. */
export function cableThatCarries(system: ResolvedSystem, { design }: MainPair): Proposal | undefined {
  const fuse = system.system.battery.fuse?.value ?? 0
  return nextBatteryCable(system, Math.max(design, fuse, nextFuse(fuseSizes.vehicle, design) ?? 0))
}

/** A smaller fuse that the cable allows and that still carries the design current, else a cable for the fuse. */
export function fuseBelowCable(system: ResolvedSystem, pair: MainPair): Proposal | undefined {
  const { fuse } = system.system.battery
  const { design, iz } = pair
  const size = iz === null ? undefined : allFuseSizes.findLast((one) => design <= one && one <= iz)
  if (fuse && size !== undefined)
    return {
      field: fuse,
      text: `${size} A`,
      why: say({ say: 'between', with: { design: figure(design), most: figure(iz!, 'A') } }),
      certainty: 'guess',
    }
  return cableThatCarries(system, pair)
}
