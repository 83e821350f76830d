import { reviewRule } from '../rule.ts'

export const loadWithoutEnergy = reviewRule({
  id: 'load-without-energy',
  severity: 'warning',
  reason: 'A load of which neither power nor energy is known counts as nothing.',
  source: 'energy balance',
  messages: {
    found: '{name} says too little: give power and hours, current and hours, or energy or charge a day',
  },

  check({ system }) {
    return system.loads.flatMap(({ name, power, hours }) =>
      name && (!power || !hours)
        ? [
            {
              say: 'found',
              with: { name },
              suspects: [name] as const,
            },
          ]
        : [],
    )
  },
})
