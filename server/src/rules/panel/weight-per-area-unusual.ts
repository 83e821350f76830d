import { figure } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import type { Measure } from '../../records/field.ts'
import type { Panel } from '../../records/records.generated.ts'
import { inside, usualFor } from '../band.ts'
import { isCrystalline } from '../../values/technology.ts'

/** kg/m2 */
const usual = { flexible: [1.2, 7.5], rigid: [6, 20], folding: [1.5, 16] } as const
const typical = { flexible: 2.9, rigid: 11.3, folding: 4.5 } as const
/** Crystalline cells without glass: films, cells and a thin back, up to 3.5 mm thick; where no thickness is given, most are. */
const thinCrystalline = { low: 1.6, high: 4.8, highOfUnknown: 5.2, thinnerThan: 0.0035 } as const
/** How far outside that narrow band a weight is that shows its own slip; estimated. */
const far = 1.25
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
    unusual: 'The weight {weight} makes {perArea}; {low} to {high} is usual for {panel}',
    typedFor: '{meant} typed as {typed}',
    decimalPointMoved: 'decimal point moved',
    kilograms: 'kilograms',
    pounds: 'pounds',
    grams: 'grams',
    ounces: 'ounces',
  },

  check(record) {
    const {
      weight,
      size: { length, width },
      construction,
    } = record
    if (!weight || !length || !width || weight.value <= 0 || length.value * width.value <= 0) return null
    const { low: usualLow, high: usualHigh, panel } = usualFor(usual, { construction })
    const thin = thinBand(record)
    const low = thin ? thin[0] : Math.min(usualLow, ...lighter(record))
    const high = thin ? thin[1] : usualHigh
    const perArea = weight.value / (length.value * width.value)
    if (low <= perArea && perArea <= high) return null
    // a weight that is just outside may as well have a side that is wrong
    const isFar = !thin || !inside(perArea, [low / far, high * far])
    const fix = likeliest(
      mistypedAs(weight).filter(({ factor }) => isFar && inside(perArea * factor, [low, high])),
      ({ factor }) => Math.abs(Math.log((perArea * factor) / typical[construction?.value ?? 'flexible'])),
      construction === undefined,
    )
    return {
      ...(fix && { correction: { field: weight, ...fix.proposal, certainty: 'guess' as const } }),
      say: 'unusual',
      with: {
        weight,
        perArea: figure(perArea, 'kg/m2'),
        low: { value: low, unit: 'kg/m2', bare: true },
        high: { value: high, unit: 'kg/m2', bare: true },
        panel,
      },
      suspects: [weight, length, width],
      severity: inside(perArea, [0.15, 40]) ? 'warning' : 'error',
    }
  },
})

/** The only way, or the one that leads much nearer to what is typical than all others. */
function likeliest<T>(all: readonly T[], off: (one: T) => number, isAnyKind: boolean): T | undefined {
  const [first, second] = [...all].sort((a, b) => off(a) - off(b))
  return !second || (!isAnyKind && off(second) - off(first!) > 0.4) ? first : undefined
}

/** What panels of this kind may weigh at least, where that is less than usual. */
function lighter({ construction, surface, cells: { technology } }: Panel): readonly number[] {
  const isThin = technology !== undefined && !isCrystalline({ cells: { technology } })
  if (construction?.value === 'rigid') return surface && surface.value !== 'glass' ? [leastOfComposite] : []
  return isThin ? [leastOfThin] : []
}

/** The band of flexible panels of silicon that are not known to be thick. */
function thinBand({ construction, surface, size, cells: { technology } }: Panel): readonly [number, number] | null {
  if (construction?.value !== 'flexible' || surface?.value === 'glass' || !technology) return null
  if (!isCrystalline({ cells: { technology } })) return null
  const { low, high, highOfUnknown, thinnerThan } = thinCrystalline
  if (!size.thickness) return [low, highOfUnknown]
  return size.thickness.value < thinnerThan ? [low, high] : null
}

const names = { kg: 'kilograms', lb: 'pounds', g: 'grams', oz: 'ounces' } as const
const kilograms = { kg: 1, lb: 0.45359237, g: 1e-3, oz: 0.028349523125 } as const
type Unit = keyof typeof kilograms

/** Slips by which a weight is far off, and what they make of it. */
function mistypedAs({ text }: Measure) {
  const parts = /^(\d+)(?:[.,](\d+))?( ?)(kg|lb|g|oz)$/.exec(text)
  if (!parts) return []
  const [, whole = '', decimals = '', blank] = parts
  const typed = parts[4] as Unit
  const digits = whole + decimals
  const moved = (at: number) => `${Number(`${digits.slice(0, at) || 0}.${digits.slice(at)}`)}${blank}${typed}`
  const units = (Object.keys(kilograms) as Unit[]).filter((unit) => unit !== typed)
  return [
    ...units.map((meant) => ({
      factor: kilograms[meant] / kilograms[typed],
      proposal: {
        text: text.replace(typed, meant),
        why: { say: 'typedFor' as const, with: { meant: { say: names[meant] }, typed: { say: names[typed] } } },
      },
    })),
    { factor: 0.1, proposal: { text: moved(whole.length - 1), why: { say: 'decimalPointMoved' as const } } },
    { factor: 10, proposal: { text: moved(whole.length + 1), why: { say: 'decimalPointMoved' as const } } },
  ]
}
