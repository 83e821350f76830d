import type { Found } from '../findings/found.ts'
import { hoursAboveDay } from '../review/rules/hours-above-day.ts'
import { reviewRules } from '../review/rules/index.generated.ts'

const ofReview: ReadonlySet<string> = new Set(reviewRules.map(({ id }) => id))

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

/** Where a value that could not be read leaves nothing to conclude: rules, all of them where none are named, and where they speak. */
const leaning: readonly (readonly [unread: RegExp, rules: readonly string[] | null, at: string])[] = [
  [/^\/arrays\/\d+(?:\/(?:panels|wiring)(?:\/.*)?)?$/, null, '/arrays/'],
  [/^\/arrays\/\d+(?:\/(?:panels|wiring|controller)(?:\/.*)?)?$/, ofYield, ''],
  [/^\/battery\/(?:battery|in_series|in_parallel)(?:\/|$)/, ofBank, ''],
  [/^\/battery\/fuse$/, ['battery-fuse-missing'], ''],
  [/^\/battery\/each_fuse$/, ['each-fuse-low'], ''],
  [/^\/arrays\/\d+\/string_fuse$/, ['string-fuse-missing'], '/arrays/'],
  [/^\/loads\/\d+\/hours$/, ['autonomy-short', 'battery-runs-empty', 'month-in-deficit'], ''],
  [/^\/loads\/\d+(?:\/|$)/, ['load-without-energy'], '/loads/'],
]

/**
 * What is found of a system without what the review concludes from a value that could not be read, or cannot be: the one finding of that
 * value is enough, and nothing is derived from what is not known.
 */
export function withoutConsequences(found: readonly Found[]): readonly Found[] {
  const unread = found.filter(
    ({ rule, severity }) => severity === 'error' && (!ofReview.has(rule.id) || rule.id === hoursAboveDay.id),
  )
  if (unread.length === 0) return found
  return found.filter((one) => !ofReview.has(one.rule.id) || !unread.some(({ pointer }) => leansOn(one, pointer)))
}

const leansOn = ({ rule, pointer }: Found, unread: string): boolean =>
  leaning.some(
    ([form, rules, at]) =>
      form.test(unread) &&
      (rules === null || rules.includes(rule.id)) &&
      // of a list, what is said of the same item
      (at === '' || itemOf(pointer) === itemOf(unread)),
  )

const itemOf = (pointer: string) => pointer.split('/').slice(0, 3).join('/')
