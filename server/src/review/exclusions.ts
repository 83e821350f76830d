import { sayFrom, type Catalogue, type Said } from '../findings/message.ts'
import type { Panel } from '../records/records.generated.ts'
import { said } from './said.ts'
import type { ResolvedSystem, Surface } from './resolved.ts'

export const excludedUses = {
  id: 'excluded-uses',
  messages: {
    boat: 'this is a boat',
    moves: 'this system moves',
    walkedOn: 'this surface is walked on',
    steppedOn: 'a bonded panel on a boat lies where people step',
    bonded: 'it is bonded here',
    sun: 'every panel lies in the sun',
    bends: 'this surface bends by {curve}',
    mounted: 'it is mounted {mounting} here',
  },
} as const satisfies Catalogue

const say = sayFrom(excludedUses)

interface Use {
  readonly words: RegExp
  /** How the system is used in that way; null where it is not. */
  readonly of: (system: ResolvedSystem['system'], panel: Panel, surface: Surface | undefined) => Said | null
}

const uses: readonly Use[] = [
  { words: /salt|marine|sea|boat/i, of: ({ kind }) => (kind?.value === 'boat' ? say({ say: 'boat' }) : null) },
  {
    words: /mobile|vehicle|motion|transport/i,
    of: ({ kind }) => (kind?.value === 'boat' || kind?.value === 'vehicle' ? say({ say: 'moves' }) : null),
  },
  {
    words: /foot|walk|step|tread/i,
    of: ({ kind }, _, surface) => {
      if (surface?.walked_on) return surface.walked_on.value ? say({ say: 'walkedOn' }) : null
      return kind?.value === 'boat' && surface?.mounting?.value === 'bonded' ? say({ say: 'steppedOn' }) : null
    },
  },
  {
    words: /curv|bend|bent/i,
    of: (_, panel, surface) => {
      const curve = surface?.curvature
      return curve && curve.value > 1 && panel.construction?.value !== 'rigid'
        ? say({ say: 'bends', with: { curve: said(curve) } })
        : null
    },
  },
  {
    words: /adhesive|glue|bonded/i,
    of: (_, __, surface) => (surface?.mounting?.value === 'bonded' ? say({ say: 'bonded' }) : null),
  },
  {
    words: /permanent|fixed/i,
    of: (_, __, surface) =>
      surface?.mounting ? say({ say: 'mounted', with: { mounting: surface.mounting.value } }) : null,
  },
  { words: /\buv\b|ultraviolet|yellow/i, of: () => say({ say: 'sun' }) },
]

/** How this system uses a panel in a way that its warranty excludes; null where it does not, or the words say nothing known. */
export function useThatIsExcluded(
  exclusion: string,
  { system }: ResolvedSystem,
  panel: Panel,
  surface: Surface | undefined,
): Said | null {
  return uses.find(({ words }) => words.test(exclusion))?.of(system, panel, surface) ?? null
}
