import { has, singles, fit, type Asked, type Fit } from './fit.ts'

export function others(asked: Asked): readonly Fit[] {
  const { says, numbers } = asked
  const kilograms = singles(asked, ['kg', 'lb', 'g'])
  const weight =
    kilograms.length && kilograms[0]!.value > 0
      ? fit(
          '/weight',
          kilograms,
          has(says, 'parts') && !says.has('weight')
            ? -3
            : /rahmen|frame|cadre|marco|cornice/i.test(asked.words)
              ? -3
              : says.has('weight')
                ? 3
                : 0,
        )
      : []
  const angle = singles(asked, ['deg']).filter((n) => n.value >= 0 && n.value <= 360)
  const bend = angle.length
    ? fit(
        '/limits/bend',
        angle.map((n) => ({ ...n, unit: 'deg' })),
        says.has('bend') ? 3 : 0,
      )
    : []
  const [first] = numbers
  const tied = numbers.slice(1).filter((n) => n.unit === null)
  const product = tied.length === 2 && tied[1]!.join === 'by' ? tied[0]!.value * tied[1]!.value : null
  const count =
    first &&
    first.unit === null &&
    asked.hint === null &&
    Number.isInteger(first.value) &&
    first.value >= 4 &&
    first.value <= 400
  const named =
    says.has('efficiency') || has(says, 'parts') ? -3 : says.has('cells') ? 3 : product === first?.value ? 2 : -3
  // `108 half-cells, electrically 54 in series`
  const series = numbers.find((n) => /^\s*(?:cells? )?in (?:series?|reihe|serie)/i.test(asked.cell.text.slice(n.end)))
  if (series && series !== first && says.has('cells'))
    return [...weight, ...bend, ...fit('/cells/in_series', [series], 3, [series.number])]
  const cells =
    count && (tied.length === 0 || named === 3 || product === first.value)
      ? fit('/cells/in_series', [{ ...first, unit: null }], named, [first.number])
      : []
  return [...weight, ...bend, ...cells]
}
