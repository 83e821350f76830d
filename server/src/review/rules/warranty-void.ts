import { useThatIsExcluded } from '../exclusions.ts'
import { elsewhere } from '../rule.ts'
import type { ReviewRule } from '../rule.ts'

export const warrantyVoid: ReviewRule = {
  id: 'warranty-void',
  severity: 'warning',
  reason: 'A warranty that excludes this use pays nothing, whatever its years.',
  source: 'the maker’s exclusions',

  check(system) {
    return system.arrays.flatMap(({ panels }) =>
      panels.flatMap(({ entry, panel, surface }) => {
        const place = entry.panel.id ?? entry.surface
        if (!panel || !place) return []
        return panel.record.warranty.exclusions.flatMap((exclusion) => {
          const use = useThatIsExcluded(exclusion.value, system, panel.record, surface)
          return use === null
            ? []
            : [
                {
                  message: `The warranty of ${panel.record.name?.text ?? 'the panel'} excludes "${exclusion.text}", and ${use}`,
                  suspects: [place] as const,
                  ...elsewhere(panel, exclusion),
                },
              ]
        })
      }),
    )
  },
}
