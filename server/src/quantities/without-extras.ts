import type { QuantityKind } from './quantity.ts'

/**
 * Sheets print more beside a quantity than a field takes: NOCT as `46 ± 2 °C`, coefficients as `(-0.38±0.05) %/K`, the standard
 * behind a voltage as `1000 V (IEC)`. Blanks in its place, so that offsets stay.
 */
export function withoutExtras(text: string, kind: QuantityKind): string {
  if (kind === 'temperature') return withoutTolerance(text)
  if (/-coefficient$/.test(kind)) return withoutSpread(text)
  return kind === 'voltage'
    ? text.replace(standard, (_, voltage: string, name: string) => voltage + blanks(name))
    : text
}

const blanks = (part: string) => ' '.repeat(part.length)

const body = '(?:IEC|UL|EN|TÜV|TUV|CE|CSA)'
const standard = new RegExp(
  `^(\\D*\\d[\\d.,]*\\s*V[^\\d(/]{0,6})(\\(\\s*${body}(?:\\s*[/,&+]\\s*${body}){0,3}\\s*\\)\\s*)$`,
)

const spread = /^(\(?)([-+−–]? ?\d[\d.,]*) ?(?:±|\+\/?[-−]) ?\d[\d.,]*(\)?) ?((?:%|ppm|m?[VAW]) ?\/.*)$/

function withoutSpread(text: string): string {
  const [, open, number, close, unit] = spread.exec(text.trim()) ?? []
  if (number === undefined || unit === undefined || (open === '') !== (close === '')) return text
  const [at, unitAt] = [text.indexOf(number), text.lastIndexOf(unit)]
  return blanks(text.slice(0, at)) + number + blanks(text.slice(at + number.length, unitAt)) + text.slice(unitAt)
}

function withoutTolerance(text: string): string {
  const [, number, unit, tolerance = '', behind = '', end = ''] = tolerated.exec(text) ?? []
  if (number === undefined) return text
  return unit ? number + unit + blanks(tolerance + behind + end) : number + blanks(tolerance) + behind + blanks(end)
}

const tolerated =
  /^(.*\d\s*)((?:[°º˚]\s*)?[CFK℃℉]\s*)?((?:\(\s*)?(?:±|\+\/?[-−])\s*\d+(?:[.,]\d+)?)(\s*(?:[°º˚]\s*)?[CFK℃℉])?(\s*(?:\)\s*)?)$/
