import type { Panel } from '../records/records.generated.ts'
import { said } from './said.ts'
import type { ResolvedSystem, Surface } from './resolved.ts'

interface Use {
  readonly words: RegExp
  /** How the system is used in that way; null where it is not. */
  readonly of: (system: ResolvedSystem['system'], panel: Panel, surface: Surface | undefined) => string | null
}

const uses: readonly Use[] = [
  { words: /salt|marine|sea|boat/i, of: ({ kind }) => (kind?.value === 'boat' ? 'this is a boat' : null) },
  {
    words: /mobile|vehicle|motion|transport/i,
    of: ({ kind }) => (kind?.value === 'boat' || kind?.value === 'vehicle' ? 'this system moves' : null),
  },
  {
    words: /foot|walk|step|tread/i,
    of: ({ kind }, _, surface) => {
      if (surface?.walked_on) return surface.walked_on.value ? 'this surface is walked on' : null
      return kind?.value === 'boat' && surface?.mounting?.value === 'bonded'
        ? 'a bonded panel on a boat lies where people step'
        : null
    },
  },
  {
    words: /curv|bend|bent/i,
    of: (_, panel, surface) => {
      const curve = surface?.curvature
      return curve && curve.value > 1 && panel.construction?.value !== 'rigid'
        ? `this surface bends by ${said(curve)}`
        : null
    },
  },
  {
    words: /adhesive|glue|bonded/i,
    of: (_, __, surface) => (surface?.mounting?.value === 'bonded' ? 'it is bonded here' : null),
  },
  {
    words: /permanent|fixed/i,
    of: (_, __, surface) => (surface?.mounting ? `it is mounted ${surface.mounting.value} here` : null),
  },
  { words: /\buv\b|ultraviolet|yellow/i, of: () => 'every panel lies in the sun' },
]

/** How this system uses a panel in a way that its warranty excludes; null where it does not, or the words say nothing known. */
export function useThatIsExcluded(
  exclusion: string,
  { system }: ResolvedSystem,
  panel: Panel,
  surface: Surface | undefined,
): string | null {
  return uses.find(({ words }) => words.test(exclusion))?.of(system, panel, surface) ?? null
}
