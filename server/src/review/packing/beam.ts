import type { Box } from './surface.ts'

/** A layout that grows along the surface. */
export interface Stairs {
  /** Where each step ends across the surface, ascending, and how far it reaches along it [µm]. */
  readonly ends: readonly number[]
  readonly reach: readonly number[]
  /** Area that panels cover or still can [µm2]: what is lost lies between them. */
  readonly left: number
  readonly count: number
  /** The last panel, and the layout without it. */
  readonly box: Box | null
  readonly before: Stairs | null
}

/** The staircases of one count that go on: those with the most area left, none twice. */
export class Beam {
  private readonly kept: Stairs[] = []
  private limit = -Infinity

  constructor(private readonly width: number) {}

  takes(left: number): boolean {
    return this.limit < left
  }

  /** Where one with so many of these steps and so much left belongs; -1 where one like it is there. */
  placeOf(ends: readonly number[], reach: readonly number[], size: number, left: number): number {
    const { kept } = this
    let from = 0
    let to = kept.length
    while (from < to) {
      const middle = (from + to) >> 1
      if (left < kept[middle]!.left) from = middle + 1
      else to = middle
    }
    // equal steps of equally many panels leave equally much
    for (let i = from; i < kept.length && kept[i]!.left === left; i++)
      if (isSame(kept[i]!, ends, reach, size)) return -1
    return from
  }

  add(stairs: Stairs, at: number): void {
    const { kept, width } = this
    kept.splice(at, 0, stairs)
    if (width < kept.length) kept.pop()
    if (width <= kept.length) this.limit = kept[width - 1]!.left
  }

  inOrder(): readonly Stairs[] {
    return this.kept
  }
}

function isSame(kept: Stairs, ends: readonly number[], reach: readonly number[], size: number): boolean {
  if (kept.ends.length !== size) return false
  for (let i = 0; i < size; i++) if (kept.ends[i] !== ends[i] || kept.reach[i] !== reach[i]) return false
  return true
}
