import { figure } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import type { Measure } from '../../records/field.ts'
import type { Panel } from '../../records/records.generated.ts'
import { inside, usualFor } from '../band.ts'
import { isCrystalline } from '../../values/technology.ts'

/** kg/m2 */
const usual = { flexible: [1.2, 7.5], rigid: [6, 20], folding: [1.5, 16] } as const
/** Films of thin cells weigh less than silicon can, and rigid composites less than glass. */
const leastOfThin = 0.15
const leastOfComposite = 3

export const weightPerAreaUnusual = panelRule({
  id: 'weight-per-area-unusual',
  severity: 'warning',
  reason:
    'Weight per area hardly differs between panels of one construction; else pounds and kilograms, or two models, are mixed up.',
  source:
    'common practice, no source; glass alone is 2.5 kg/m2 per mm; Martins et al., "Robust glass-free lightweight photovoltaic modules": framed glass 10 to 15 kg/m2, composites without glass 3.6 kg/m2',
  messages: {
    unusual: '{weight} on {length} by {width} is {perArea}; {low} to {high} is usual for {panel}',
    poundsTypedAs: 'pounds typed as kilograms',
    decimalPointMoved: 'decimal point moved',
  },

  check(record) {
    const {
      weight,
      size: { length, width },
      construction,
    } = record
    if (!weight || !length || !width || weight.value <= 0 || length.value * width.value <= 0) return null
    const { low: usualLow, high, panel } = usualFor(usual, { construction })
    const low = Math.min(usualLow, ...lighter(record))
    const perArea = weight.value / (length.value * width.value)
    if (low <= perArea && perArea <= high) return null
    const fixes = ways(weight).filter(({ factor }) => inside(perArea * factor, [low, high]))
    const [fix] = fixes
    return {
      ...(fix && fixes.length === 1 && { correction: { field: weight, ...fix.proposal, certainty: 'guess' as const } }),
      say: 'unusual',
      with: { weight, length, width, perArea: figure(perArea, 'kg/m2'), low, high, panel },
      suspects: [weight, length, width],
      severity: inside(perArea, [0.15, 40]) ? 'warning' : 'error',
    }
  },
})

/** What panels of this kind may weigh at least, where that is less than usual. */
function lighter({ construction, surface, cells: { technology } }: Panel): readonly number[] {
  const isThin = technology !== undefined && !isCrystalline({ cells: { technology } })
  if (construction?.value === 'rigid') return surface && surface.value !== 'glass' ? [leastOfComposite] : []
  return isThin ? [leastOfThin] : []
}

/** Slips by which a weight is far off, and what they make of it. */
function ways({ text }: Measure) {
  const parts = /^(\d+)(?:[.,](\d+))?( ?)kg$/.exec(text)
  if (!parts) return []
  const [, whole = '', decimals = '', blank] = parts
  const digits = whole + decimals
  const moved = (at: number) => `${Number(`${digits.slice(0, at) || 0}.${digits.slice(at)}`)}${blank}kg`
  return [
    { factor: 0.45359237, proposal: { text: text.replace('kg', 'lb'), why: { say: 'poundsTypedAs' } } },
    { factor: 0.1, proposal: { text: moved(whole.length - 1), why: { say: 'decimalPointMoved' } } },
    { factor: 10, proposal: { text: moved(whole.length + 1), why: { say: 'decimalPointMoved' } } },
  ]
}
