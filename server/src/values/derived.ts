import { formatIn } from '../quantities/format.ts'
import type { Panel } from '../records/records.generated.ts'
import type { Site } from './site.ts'
import type { InputShown, Value } from './value.ts'

/** An input of a derived value: how to find it, and how to name it when it is missing. */
export interface Input {
  readonly missing: string | ((panel: Panel, site: Site) => readonly string[])
  /** undefined when it is not known; an optional input then counts as not given. */
  find(panel: Panel, site: Site): InputShown | undefined
  readonly optional?: true
}

/** A derived value as it is defined: facts and one formula, no ifs. `compute` gets SI numbers in the order of `needs`. */
export interface Derived {
  readonly id: string
  readonly label: string
  readonly unit: string | ((inputs: readonly (InputShown | undefined)[]) => string)
  readonly formula: string
  readonly source: string | ((panel: Panel, site: Site) => string)
  readonly uncertainty?: string | ((panel: Panel, site: Site) => string)
  /** The field at whose line the value belongs. */
  readonly pointer: string
  readonly needs: readonly Input[]
  compute(...inputs: number[]): number
}

/** A sheet prints its ratings to three digits, so what follows from them has no more (common practice, no source). */
const digits = 3

/** Works a definition out for one record. What is missing is named, never guessed. */
export function derive(definition: Derived, panel: Panel, site: Site): Value {
  const { id, label, formula, pointer, needs } = definition
  const found = needs.map((need) => need.find(panel, site))
  const missing = lacking(needs, found).flatMap((need) =>
    typeof need.missing === 'string' ? need.missing : need.missing(panel, site),
  )
  const inputs = found.filter((input) => input !== undefined)
  const unit = typeof definition.unit === 'string' ? definition.unit : definition.unit(found)
  const value = missing.length ? null : computed(definition, found)
  const why = value === null && missing.length === 0 ? ['a physical result from these inputs'] : missing
  const text = value === null ? 'not known' : formatIn(value, unit, digits)
  const worded = (words: Derived['source']) => (typeof words === 'string' ? words : words(panel, site))
  const source = worded(definition.source)
  const uncertainty = definition.uncertainty === undefined ? null : worded(definition.uncertainty)
  return { id, label, value, unit, text, formula, inputs, missing: why, source, uncertainty, pointer }
}

/** The value that `derive` gives, without its words: a comparison asks hundreds of panels for nothing else. */
export function deriveNumber(definition: Derived, panel: Panel, site: Site): number | null {
  const found = definition.needs.map((need) => need.find(panel, site))
  return lacking(definition.needs, found).length > 0 ? null : computed(definition, found)
}

type Found = readonly (InputShown | undefined)[]

const lacking = (needs: readonly Input[], found: Found): readonly Input[] =>
  needs.filter((need, i) => !found[i] && !need.optional)

/** Null where no physical value follows. */
function computed(definition: Derived, found: Found): number | null {
  const result = definition.compute(...found.map((input) => input?.value ?? NaN))
  return Number.isFinite(result) ? result : null
}
