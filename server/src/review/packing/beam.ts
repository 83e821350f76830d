import type { Box } from './surface.ts'

/** A layout that grows along the surface. */
export interface Stairs {
  /** Where each step ends across the surface, ascending, and how far it reaches along it [µm]. */
  readonly ends: readonly number[]
  readonly reach: readonly number[]
  /** Area that no panel can cover any more [µm2]. */
  readonly lost: number
  readonly count: number
  /** The last panel, and the layout without it. */
  readonly box: Box | null
  readonly before: Stairs | null
}

/** The staircases of one count that go on: those that lost least, none twice. */
export class Beam {
  private readonly kept: Stairs[] = []

  constructor(private readonly width: number) {}

  takes(lost: number): boolean {
    const { kept, width } = this
    return kept.length < width || lost < kept[width - 1]!.lost
  }

  add(stairs: Stairs): void {
    const { kept } = this
    let at = kept.length
    for (; at > 0 && stairs.lost <= kept[at - 1]!.lost; at--) if (isSame(stairs, kept[at - 1]!)) return
    kept.splice(at, 0, stairs)
    if (this.width < kept.length) kept.pop()
  }

  inOrder(): readonly Stairs[] {
    return this.kept
  }
}

/** Equal steps of equally many panels have lost equally much. */
function isSame(a: Stairs, b: Stairs): boolean {
  if (a.lost !== b.lost || a.ends.length !== b.ends.length) return false
  for (let i = 0; i < a.ends.length; i++) if (a.ends[i] !== b.ends[i] || a.reach[i] !== b.reach[i]) return false
  return true
}
