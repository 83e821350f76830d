import type { Found } from '../findings/found.ts'

export const isSerious = ({ severity }: Found): boolean => severity === 'error' || severity === 'warning'

/** How much a finding has to say: an error more than a warning, one with a fix more than one without. */
export const weight = ({ severity, fixes }: Found): number =>
  (severity === 'error' ? 2 : 0) + (fixes.length > 0 ? 1 : 0)

/** The fields of this file that a finding speaks of. */
const fieldsOf = ({ pointer, places }: Found): readonly string[] => [
  pointer,
  ...places.filter(({ path }) => path === undefined).map((place) => place.pointer),
]

/**
 * Serious findings that share a field speak of one mistake; the strongest stands for them, on the field most of them name,
 * and for what is merely unusual about the same fields. Of what is unusual that with a fix stands for the rest.
 */
export function withoutShared(found: readonly Found[]): readonly Found[] {
  const kept: Found[] = []
  const mentions = new Map<string, number>()
  const all = found.filter(isSerious)
  for (const one of all) for (const field of fieldsOf(one)) mentions.set(field, (mentions.get(field) ?? 0) + 1)
  const blame = (one: Found) => mentions.get(one.pointer) ?? 0
  const serious = [...all].sort((a, b) => weight(b) - weight(a) || blame(b) - blame(a))
  for (const one of serious) {
    const fields = new Set(fieldsOf(one))
    if (!kept.some((k) => fieldsOf(k).some((field) => fields.has(field)))) kept.push(one)
  }
  const speaks = [...kept, ...found.filter((f) => f.severity === 'information' && f.fixes.length > 0)]
  const isSaid = (f: Found) =>
    f.severity === 'information' &&
    speaks.some((k) => k !== f && fieldsOf(f).every((field) => fieldsOf(k).includes(field)))
  return found.filter((f) => (isSerious(f) ? kept.includes(f) : !isSaid(f)))
}
