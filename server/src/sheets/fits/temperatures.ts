import { has, fit, type Asked, type Fit } from './fit.ts'

export function temperatures(asked: Asked): readonly Fit[] {
  const { says, numbers, hint, words } = asked
  const main = numbers.filter((n) => n.join !== 'spread')
  const [low, high] = main
  const unit = numbers.find((n) => n.unit)?.unit ?? hint
  if (!low || unit !== '°C') return []
  if (
    high &&
    (high.join === 'range' || high.join === 'slash') &&
    low.value < 0 &&
    high.value >= 40 &&
    (high.unit ?? unit) === '°C'
  ) {
    const named = has(says, 'storage') ? -3 : has(says, 'operating') ? 3 : says.has('temperature') ? 2 : 0
    return [
      {
        field: '/limits/operating_temperature',
        typed: `${low.number}..${high.number} °C`,
        also: [],
        value: low.value,
        named,
      },
    ]
  }
  if (high && high.unit !== '°F') return []
  const spread = numbers.some((n) => n.join === 'spread')
  const named = says.has('noct')
    ? 3
    : /\bt ?no/i.test(words)
      ? 2
      : has(says, 'storage', 'coefficient')
        ? -3
        : spread && says.has('temperature')
          ? 2
          : spread
            ? 1
            : 0
  return low.value >= 36 && low.value <= 60 ? fit('/noct/temperature', [{ ...low, unit: '°C' }], named) : []
}
