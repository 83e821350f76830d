import { stringExpected } from '../measured/panel-expected.ts'
import { cautionsIn } from '../cautions.ts'
import type { ResolvedPanels, ResolvedSystem } from '../resolved.ts'
import { stringsOf } from '../strings.ts'
import { translated, type Bundle } from '../../wording/bundle.ts'
import { inCatalogue, sayIn } from '../../wording/phrase.ts'

/** The sheet to take along: what each string should show in the sun and warmth of a day. */
export interface FormData {
  readonly name: string
  readonly cautions: readonly string[]
  readonly arrays: readonly FormArray[]
}

export interface FormArray {
  readonly id: string
  readonly strings: readonly FormString[]
}

export interface FormString {
  /** From 1. */
  readonly number: number
  /** `2 x Tern 110`. */
  readonly panels: string
  /** One a condition, in the order of `formConditions`; null where a record says too little. */
  readonly expected: readonly { readonly voc: number | null; readonly isc: number | null }[]
}

/** Of a dull hour to full sun [W/m2], and of cells on a cold, a mild and a hot day [°C] (common practice, no source). */
export const formIrradiances = [400, 600, 800, 1000] as const
export const formTemperatures = [15, 40, 65] as const

const formConditions = formIrradiances.flatMap((irradiance) =>
  formTemperatures.map((temperature) => ({ irradiance, temperature })),
)

/** What can hurt whoever measures. */
const whileMeasuring = [
  inCatalogue`Strings are live in daylight, and a DC arc does not go out by itself. Never pull a connector or a fuse under load: switch the load off, then open the disconnect.`,
  inCatalogue`Measure Isc only with a switch or a shorting lead rated for the voltage and current of the string, never with the leads of a multimeter; measure current with a DC clamp.`,
  inCatalogue`Use a meter and leads of a category rated for the voltage on a cold morning. Look at the polarity before anything is connected.`,
  inCatalogue`Measure in steady sun above 400 W/m2, without passing clouds, all strings within a few minutes; take the irradiance in the plane of the panels.`,
] as const

export function formData({ id, system, arrays }: ResolvedSystem, bundle?: Bundle): FormData {
  return {
    name: system.name?.text ?? id,
    cautions: [...whileMeasuring.map((one) => translated(one, bundle)), ...cautionsIn(bundle)],
    arrays: arrays.map((array, i) => ({
      id: array.entry.id?.text ?? String(i + 1),
      strings: stringsOf(array).map((panels, k) => formString(panels, k + 1, bundle)),
    })),
  }
}

function formString(panels: readonly ResolvedPanels[], number: number, bundle: Bundle | undefined): FormString {
  const records = panels.map(({ panel }) => panel?.record)
  const counts = new Map<string, number>()
  for (const { panel, entry } of panels) {
    const name = panel?.record.name?.text ?? entry.panel.id?.text ?? sayIn(bundle)`panel`
    counts.set(name, (counts.get(name) ?? 0) + 1)
  }
  return {
    number,
    panels: [...counts].map(([name, count]) => `${count} x ${name}`).join(', '),
    expected: formConditions.map((conditions) => {
      const { voc, isc } = stringExpected(records, conditions)
      return { voc, isc }
    }),
  }
}
