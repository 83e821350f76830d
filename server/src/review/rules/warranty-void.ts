import { useThatIsExcluded } from '../exclusions.ts'
import { elsewhere } from '../rule.ts'
import { reviewRule } from '../rule.ts'

export const warrantyVoid = reviewRule({
  id: 'warranty-void',
  severity: 'warning',
  reason: 'A warranty that excludes this use pays nothing, whatever its years.',
  source: 'the maker’s exclusions',
  messages: {
    thePanel: 'the panel',
    void: 'The warranty of {name} excludes "{exclusion}", and {use}',
  },

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
                  say: 'void',
                  with: { name: panel.record.name ?? { say: 'thePanel' }, exclusion, use },
                  suspects: [place],
                  ...elsewhere(panel, exclusion),
                },
              ]
        })
      }),
    )
  },
})
