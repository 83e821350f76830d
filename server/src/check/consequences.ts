import type { Found } from '../findings/found.ts'
import { reading } from '../records/facts.ts'
import { fieldsInVersions } from '../records/hazards.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { System } from '../records/records.generated.ts'
import { hoursAboveDay } from '../review/rules/hours-above-day.ts'
import { reviewRules } from '../review/rules/index.generated.ts'
import { childPointer, parentPointer } from '../text/pointer.ts'
import { twoReadings } from '../text/hazards/two-readings.ts'

const ofReview: ReadonlySet<string> = new Set(reviewRules.map(({ id }) => id))

/** What leans on how many panels are in a string, and how many strings there are. */
const ofStrings = [
  'array-cable-drop-high',
  'array-cable-thin',
  'array-power-high',
  'disconnect-rating-low',
  'mixed-panels-in-parallel',
  'mixed-panels-in-series',
  'output-fuse-off',
  'pwm-mismatch',
  'short-circuit-current-high',
  'string-fuse-missing',
  'string-fuse-off',
  'string-voltage-high',
  'string-voltage-low',
  'system-voltage-exceeded',
  'touch-voltage-high',
  'unlike-planes-in-series',
  'wiring-count-mismatch',
]

/** What leans on the current and the energy of all arrays. */
const ofYield = [
  'battery-cable-drop-high',
  'battery-cable-thin',
  'battery-fuse-low',
  'battery-runs-empty',
  'charge-current-clipped',
  'charge-current-high',
  'charge-current-low',
  'month-in-deficit',
]
const ofBank = ['autonomy-short', 'battery-runs-empty', 'charge-current-high', 'charge-current-low']

/** What a value that could not be read leaves nothing to conclude about, and whether only in the same item of a list. */
export const leaning: readonly (readonly [unread: RegExp, rules: readonly string[], isInItem: boolean])[] = [
  [/^\/arrays\/\d+\/(?:wiring|panels(?:\/\d+(?:\/(?:panel|count))?)?$)/, ofStrings, true],
  [/^\/arrays\/\d+\/(?:wiring|controller$|panels(?:\/\d+(?:\/(?:panel|count))?)?$)/, ofYield, false],
  [/^\/battery\/(?:battery|in_series|in_parallel)(?:\/|$)/, ofBank, false],
  [/^\/battery\/fuse$/, ['battery-fuse-missing'], false],
  [/^\/battery\/each_fuse$/, ['each-fuse-low'], false],
  [/^\/arrays\/\d+\/string_fuse$/, ['string-fuse-missing'], true],
  [/^\/loads\/\d+\/hours$/, ['autonomy-short', 'battery-runs-empty', 'month-in-deficit'], false],
  [/^\/loads\/\d+(?:\/|$)/, ['load-without-energy'], true],
]

/**
 * What is found of a system without what the review concludes from a value that could not be read, or cannot be: the one
 * finding of that value is enough, and nothing is derived from what is not known.
 */
export function withoutConsequences(file: ReadFile, found: readonly Found[]): readonly Found[] {
  if (file.kind !== 'system') return found
  const unread = found
    .filter(
      ({ rule, severity }) =>
        (severity === 'error' || rule.id === twoReadings.id) &&
        !ofReview.has(rule.id) &&
        rule.id !== reading.missingField.id,
    )
    .map(({ pointer }) => pointer)
  const misspelt = found
    .filter(({ rule }) => rule.id === reading.unknownField.id)
    .flatMap(({ pointer, fixes }) => fixes.map(({ text }) => childPointer(parentPointer(pointer), text)))
  const impossible = found.filter(({ rule }) => rule.id === hoursAboveDay.id).map(({ pointer }) => pointer)
  const unknown = [
    ...unread,
    ...misspelt,
    ...impossible,
    ...fieldsInVersions(file.tree),
    ...missingIn(file.record as System),
  ]
  if (unknown.length === 0) return found
  return found.filter((one) => !ofReview.has(one.rule.id) || !unknown.some((pointer) => leansOn(one, pointer)))
}

/** What strings are made of, where it is not given; of other fields the review says what their absence means. */
const missingIn = ({ arrays }: System): readonly string[] =>
  arrays.flatMap(({ wiring, panels }, i) => [
    ...(wiring.in_series && wiring.in_parallel ? [] : [`/arrays/${i}/wiring`]),
    ...panels.flatMap(({ count }, k) => (count ? [] : [`/arrays/${i}/panels/${k}/count`])),
  ])

const leansOn = ({ rule, pointer }: Found, unread: string): boolean =>
  leaning.some(
    ([form, rules, isInItem]) =>
      form.test(unread) && rules.includes(rule.id) && (!isInItem || itemOf(pointer) === itemOf(unread)),
  )

const itemOf = (pointer: string) => pointer.split('/').slice(0, 3).join('/')
