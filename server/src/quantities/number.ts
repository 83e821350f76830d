/** A number as printed, in the plain text that it was found in. */
export interface Scanned {
  readonly value: number
  /** Half a unit of the last printed digit, in the number's own unit. */
  readonly half: number
  readonly start: number
  readonly end: number
  /** Digits and a decimal point only: what the number should read. */
  readonly plain: string
  readonly odd?: 'decimal-comma' | 'spelling'
  /** One comma and three digits: thousands or decimals? */
  readonly ambiguous?: true
}

const grouped = /\d{1,3}([ '])\d{3}(?:\1\d{3})*(?!\d)(?:[.,]\d+)?/y
const simple = /(?:\d+(?:[.,_]\d+)*(?:\.(?![.\d]))?|[.,]\d+)(?:[eE][-+]?\d{1,3}(?![\dA-Za-z]))?/y
const fraction = /(?:(\d{1,6})(?: +| ?- ?))?(\d{1,3}) ?\/ ?(\d{1,3})(?!\d)/y

/** Nothing that a record holds is so large or so small, and what is worked out from such a number may have no end; common practice, no source. */
export const isBeyond = (value: number): boolean => value !== 0 && !(1e-9 <= Math.abs(value) && Math.abs(value) <= 1e15)

/** The unsigned number at `at`, or null. Fractions of a rule (`46 7/8`) only where `fractions` are usual. */
export function scanNumber(text: string, at: number, fractions: boolean): Scanned | null {
  return (fractions && scanFraction(text, at)) || scanDecimal(text, at)
}

function scanFraction(text: string, at: number): Scanned | null {
  fraction.lastIndex = at
  const match = fraction.exec(text)
  if (!match) return null
  const [all, whole = '0', top, bottom] = match
  const parts = Number(bottom)
  if (![2, 3, 4, 5, 8, 10, 16, 32, 64].includes(parts) || Number(top) >= parts) return null
  const value = Number(whole) + Number(top) / parts
  return { value, half: 0.5 / parts, start: at, end: at + all.length, plain: all }
}

function scanDecimal(text: string, at: number): Scanned | null {
  grouped.lastIndex = at
  let match = grouped.exec(text)
  if (!match) {
    simple.lastIndex = at
    match = simple.exec(text)
  }
  if (!match) return null
  const typed = match[0]
  const span = { start: at, end: at + typed.length }
  const [mantissa = '', exponent] = typed.split(/[eE]/)
  const groups = mantissa.replace(/[ '_]/g, '')
  const decimal = decimalSign(groups)
  if (decimal === null) return null
  const { sign, ambiguous } = decimal
  const cut = sign ? groups.lastIndexOf(sign) : groups.length
  const decimals = groups.slice(cut + 1)
  const digits = `${groups.slice(0, cut).replace(/[.,]/g, '') || '0'}${decimals && `.${decimals}`}`
  const power = Number(exponent ?? 0)
  const value = Number(power ? `${digits}e${power}` : digits)
  if (isBeyond(value)) return null
  const places = Math.max(0, decimals.length - power)
  const plain = power ? value.toFixed(Math.min(places, 100)) : digits
  const half = 0.5 * 10 ** (power - decimals.length)
  const scanned = { value, half, ...span, plain }
  if (ambiguous) return { ...scanned, ambiguous }
  if (sign === ',') return { ...scanned, odd: 'decimal-comma' }
  return exponent !== undefined || /_|\.$|\..*\./.test(mantissa) ? { ...scanned, odd: 'spelling' } : scanned
}

/** Which sign parts the decimals: the last one, where the others part thousands. null: it is no number at all. */
function decimalSign(digits: string): { sign: '.' | ',' | ''; ambiguous?: true } | null {
  const signs = digits.replace(/\d/g, '')
  if (signs === '' || signs === '.') return { sign: signs }
  if (signs === ',') return /^[1-9]\d{0,2},\d{3}$/.test(digits) ? { sign: ',', ambiguous: true } : { sign: ',' }
  if (/^\d{1,3}(,\d{3})+$/.test(digits) || /^\d{1,3}(\.\d{3})+$/.test(digits)) return { sign: '' }
  if (/^\d{1,3}(,\d{3})+\.\d*$/.test(digits)) return { sign: '.' }
  if (/^\d{1,3}(\.\d{3})+,\d+$/.test(digits)) return { sign: ',' }
  return null
}

/** `1,190 mm` is no millimetre and a fifth, `1,190 m` is more than a kilometre: units in which one of the readings is absurd. */
const inThousands = new Set(['mm', 'W', 'Wh', 'g', 'mAh'])
const inDecimals = new Set(['m', 'kg', 'lb', 'in', 'ft'])

/** Whether a comma before three digits and this unit is one of thousands. */
export const isInThousands = (unit: string): boolean => inThousands.has(unit)

/** A number with one comma before three digits, where its unit says what the comma is. */
export function disambiguated(number: Scanned, unit: string): Scanned {
  const { ambiguous, ...rest } = number
  if (!ambiguous || !(isInThousands(unit) || inDecimals.has(unit))) return number
  if (inDecimals.has(unit)) return { ...rest, odd: 'decimal-comma' }
  return {
    ...rest,
    value: Math.round(1000 * rest.value),
    half: 0.5,
    plain: rest.plain.replace('.', ''),
    odd: 'decimal-comma',
  }
}
