import { ratingsAmong } from './electric.ts'
import type { Placed } from './models.ts'

/**
 * Distinguishes standard from nominal conditions where no heading does: the ratings of one table are then three quarters of the
 * power and four fifths of the current of another's. Other tables (weak light, gain of the rear side) are left out.
 */
export function withConditions(pool: readonly Placed[]): readonly Placed[] {
  const blocks = [...new Set(pool.filter(isElectric).map(({ block }) => block))].map((block) => {
    const cells = pool.filter((one) => one.block === block && isElectric(one))
    const made = ratingsAmong(cells)
    return {
      block,
      // a word in one label, as `STC rating`, does not speak of the table
      condition: cells.every((c) => c.condition === cells[0]!.condition) ? cells[0]!.condition : null,
      power: made.pmax?.fit.value,
      current: (made.isc ?? made.imp)?.fit.value,
      size: Object.keys(made).length,
    }
  })
  const whole = blocks.filter(({ size, power }) => size >= 3 && power)
  const drop = new Set<string>()
  const set = new Map<string, 'stc' | 'noct'>()
  const stc = whole.filter((b) => b.condition === 'stc')
  const open = whole.filter((b) => b.condition === null)
  const first = stc[0] ?? open.find((b) => open.some((o) => isNominal(o, b))) ?? open[0]
  if (first) {
    set.set(first.block, 'stc')
    for (const other of open) {
      if (other === first || set.has(other.block)) continue
      if (isNominal(other, first)) set.set(other.block, 'noct')
      else if (Math.abs(other.power! / first.power! - 1) > 0.005) drop.add(other.block)
    }
  }
  return pool
    .filter((one) => !(isElectric(one) && drop.has(one.block)))
    .map((one) => {
      const known = isElectric(one) ? set.get(one.block) : undefined
      return known === undefined ? one : { ...one, condition: known }
    })
}

interface Block {
  readonly power: number | undefined
  readonly current: number | undefined
}

const isNominal = (a: Block, b: Block): boolean => {
  const power = a.power! / b.power!
  const current = a.current && b.current ? a.current / b.current : 0.8
  return 0.66 < power && power < 0.84 && 0.74 < current && current < 0.87
}

const isElectric = ({ fits }: Placed): boolean => fits.some(({ field }) => !field.startsWith('/'))
