import type { ReviewRule } from '../rule.ts'

export const loadWithoutEnergy: ReviewRule = {
  id: 'load-without-energy',
  severity: 'warning',
  reason: 'A load of which neither power nor energy is known counts as nothing.',
  source: 'energy balance',

  check({ system }) {
    return system.loads.flatMap(({ name, power, hours }) =>
      name && (!power || !hours)
        ? [
            {
              message: `${name.text} says too little: give power and hours, current and hours, or energy or charge a day`,
              suspects: [name] as const,
            },
          ]
        : [],
    )
  },
}
