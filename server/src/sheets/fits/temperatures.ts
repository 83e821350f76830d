import { has, fit, type Asked, type Fit } from './fit.ts'

export function temperatures(asked: Asked): readonly Fit[] {
  const { says, numbers, hint, words } = asked
  const main = numbers.filter((n) => n.join !== 'spread')
  const [low, high] = main
  const unit = numbers.find((n) => n.unit)?.unit ?? hint
  if (!low || (unit !== '°C' && unit !== '°F')) return []
  const celsius = (value: number) => (unit === '°F' ? (value - 32) / 1.8 : value)
  if (
    high &&
    (high.join === 'range' || high.join === 'slash') &&
    celsius(low.value) < 0 &&
    celsius(high.value) >= 40 &&
    (high.unit ?? unit) === unit
  ) {
    const named = has(says, 'storage') ? -3 : has(says, 'operating') ? 3 : says.has('temperature') ? 2 : 0
    return [
      {
        field: '/limits/operating_temperature',
        typed: `${low.number}..${high.number} ${unit}`,
        also: [],
        value: low.value,
        named,
      },
    ]
  }
  if (high && (high.unit === unit || (high.unit !== '°F' && high.unit !== '°C'))) return []
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
  const warmth = celsius(low.value)
  return warmth >= 36 && warmth <= 60 ? fit('/noct/temperature', [{ ...low, unit }], named) : []
}
