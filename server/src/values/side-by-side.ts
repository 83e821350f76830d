import type { Panel, Settings } from '../records/records.generated.ts'
import { derive } from './derived.ts'
import { efficiency } from './efficiency.ts'
import { expectedLife, type ExpectedLife } from './expected-life.ts'
import { panelYear, yearLacks } from './panel-year.ts'
import { pmaxHot } from './pmax-hot.ts'
import { powerPerWeight } from './power-per-weight.ts'
import { pricePerKwh } from './price-per-kwh.ts'
import { pricePerWatt } from './price-per-watt.ts'
import type { Mounting, Site } from './site.ts'
import type { Value } from './value.ts'

export interface Money {
  readonly amount: number
  /** ISO 4217 code */
  readonly currency: string
}

/** What one panel answers to the five questions of somebody who chooses; null where it is not known. */
export interface PanelAnswers {
  readonly panel: string
  readonly efficiency: number | null
  readonly efficiency_printed: number | null
  readonly pmax_hot_w: Readonly<Record<Mounting, number | null>>
  readonly w_per_kg: number | null
  /** Null where no frame is given. */
  readonly w_per_kg_framed: number | null
  readonly price_per_watt: Money | null
  readonly price_per_kwh: { readonly warranted: Money | null; readonly expected: Money | null }
  readonly warranty: {
    readonly output_years: number | null
    /** Guaranteed share of the rated power at the end. */
    readonly at_least: number | null
    readonly workmanship_years: number | null
    readonly exclusions: readonly string[]
  }
  readonly surface: string | null
  readonly not_known: readonly string[]
}

/** The same with what a table says beside it. */
export interface SideBySide {
  readonly answers: PanelAnswers
  readonly construction: string | null
  readonly life: ExpectedLife | null
  /** Years and guaranteed share of each warranty step, ascending. */
  readonly steps: readonly { readonly years: number; readonly share: number }[]
}

const mountings: readonly Mounting[] = ['bonded', 'canvas', 'standoff', 'open rack']

/** Energy of the expected life counts at full power, without ageing: what is expected to fail is the whole panel. */
export function sideBySide(id: string, panel: Panel, site: Site, settings: Settings | undefined): SideBySide {
  const framed = panel.mounting_frame.weight ? derive(powerPerWeight, panel, site) : null
  const bare = derive(powerPerWeight, { ...panel, mounting_frame: {} }, site)
  const perWatt = derive(pricePerWatt, panel, site)
  const warranted = derive(pricePerKwh, panel, site)
  const fromSize = derive(efficiency, panel, site)
  const hot = mountings.map((mounting) => derive(pmaxHot, panel, { ...site, mounting }))
  const life = expectedLife(panel, settings)
  const steps = stepsOf(panel)
  const { warranty } = panel
  const missing = [fromSize, ...hot, bare, perWatt, warranted].flatMap((value) => value.missing)
  const unsaid: readonly (readonly [unknown, string])[] = [
    [panel.stc.efficiency, 'printed efficiency'],
    [panel.mounting_frame.weight, 'mounting frame'],
    [life, panel.construction ? 'expected life' : 'construction'],
    [warranty.workmanship.years, 'workmanship warranty'],
    [panel.surface, 'front cover'],
  ]
  return {
    answers: {
      panel: id,
      efficiency: fromSize.value,
      efficiency_printed: panel.stc.efficiency?.value ?? null,
      pmax_hot_w: Object.fromEntries(mountings.map((mounting, i) => [mounting, hot[i]!.value])) as Record<
        Mounting,
        number | null
      >,
      w_per_kg: bare.value,
      w_per_kg_framed: framed?.value ?? null,
      price_per_watt: money(perWatt, panel),
      price_per_kwh: { warranted: money(warranted, panel), expected: perExpectedKwh(panel, site, life) },
      warranty: {
        output_years: steps.at(-1)?.years ?? null,
        at_least: steps.at(-1)?.share ?? null,
        workmanship_years: warranty.workmanship.years?.value ?? null,
        exclusions: warranty.exclusions.map(({ text }) => text),
      },
      surface: panel.surface?.value ?? null,
      not_known: [
        ...new Set([
          ...missing,
          ...yearLacks(panel, site),
          ...unsaid.flatMap(([found, name]) => (found ? [] : [name])),
        ]),
      ],
    },
    construction: panel.construction?.value ?? null,
    life,
    steps,
  }
}

/** Steps that can be used, ascending by year. */
const stepsOf = ({ warranty: { output } }: Panel) =>
  output
    .flatMap(({ years, at_least: share }) => (years && share ? [{ years: years.value, share: share.value }] : []))
    .sort((a, b) => a.years - b.years)

function money({ value }: Value, { price: { amount } }: Panel): Money | null {
  return value === null || !amount ? null : { amount: value, currency: amount.quantity.unit }
}

function perExpectedKwh(panel: Panel, site: Site, life: ExpectedLife | null): Money | null {
  const year = panelYear(panel, site)
  const { amount } = panel.price
  if (!year || !life || !amount || year.total <= 0) return null
  return { amount: amount.value / ((year.total / 1000) * life.years), currency: amount.quantity.unit }
}
