import { has, singles, fit, type Asked, type Fit } from './fit.ts'

export function percents(asked: Asked): readonly Fit[] {
  const { says, numbers, hint, words } = asked
  const [first, second, third] = numbers
  const unit = numbers.find((n) => n.unit)?.unit ?? hint
  if (!first || third || (unit !== '%' && unit !== 'W')) return []
  const pair =
    second && (second.join === 'range' || second.join === 'slash' || (second.signed === '-' && first.signed === '+'))
  const spread = !second && first.join === 'spread'
  const high = !second && first.signed === '+'
  if (pair || spread || high) {
    if (first.value > 20 || says.has('coefficient')) return []
    const named = says.has('tolerance')
      ? 3
      : has(says, 'parts', 'cells', 'temperature', 'efficiency')
        ? -3
        : has(says, 'power')
          ? 2
          : 0
    const [low, up] = pair
      ? [Math.min(first.value, second.value), Math.max(first.value, second.value)]
      : spread
        ? [-first.value, first.value]
        : [0, first.value]
    const typed = spread ? `±${first.number} ${unit}` : `${low < 0 ? low : '0'}/+${up} ${unit}`
    return [{ field: '/stc/tolerance', typed, also: [], value: up, named }]
  }
  if (second && second.join !== 'spread') return []
  if (unit === '%' && says.has('tolerance') && first.value <= 10)
    return [{ field: '/stc/tolerance', typed: `±${first.number} %`, also: [], value: first.value, named: 3 }]
  const percent = singles(asked, ['%'])
  if (!percent.length || first.value < 3 || first.value > 30) return []
  const cell = says.has('cells') || /\bcell/i.test(words)
  return fit(
    '/stc/efficiency',
    percent,
    cell || has(says, 'tolerance', 'coefficient') ? -3 : says.has('efficiency') ? 3 : 0,
  )
}
