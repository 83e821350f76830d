import type { Checked } from '../check/checked.ts'
import type { Value } from '../values/value.ts'

/** Derived values without those that follow from a number that is probably another one: they would pass for facts. */
export function soundValues({ kind, findings, values }: Checked): readonly Value[] {
  // a fuse that should be another is typed as it is fitted, and what follows from it is so
  if (kind === 'system') return values()
  const wrong = new Set(
    findings.flatMap(({ severity, corrections: [best] }) =>
      best?.certainty === 'guess' && (severity === 'error' || severity === 'warning')
        ? [best.pointer, ...(best.also ?? []).map(({ pointer }) => pointer)]
        : [],
    ),
  )
  return values().filter(({ inputs }) => inputs.every(({ pointer }) => pointer === null || !wrong.has(pointer)))
}
