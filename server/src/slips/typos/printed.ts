import { isInThousands } from '../../quantities/number.ts'

/** A field's text taken apart: sign and digits, and all that stands behind them. */
export interface Printed {
  readonly number: string
  readonly rest: string
}

/** `-0,38 %/°C` is `-0.38` and ` %/°C`, `1,190 mm` is `1190`; null where the text does not start with one plain number. */
export function takeApart(typed: string): Printed | null {
  const [, unit] = /^\s*[1-9]\d?,\d{3}\s*([A-Za-z]*)$/.exec(typed) ?? []
  const text = (unit && isInThousands(unit) ? typed.replace(/,/, '') : typed).replace(grouped, '$1$2')
  const match = /^\s*(?:([-−–])\s*)?(\d+(?:[.,]\d*)?|[.,]\d+)(?![\d.,])(.*)$/s.exec(text)
  if (!match) return null
  return { number: (match[1] ? '-' : '') + match[2]!.replace(',', '.'), rest: match[3]!.trimEnd() }
}

/** `1 600` with any of the spaces that stand between thousands. */
const grouped = /^(\s*[-−–]?\s*\d{1,3})[ \u00a0\u2009\u202f](\d{3})(?!\d)/

export const decimalsOf = (number: string): number =>
  number.includes('.') ? number.length - 1 - number.indexOf('.') : 0

/** A coefficient per module (V/K, mV/°C, W/K) and not a share. */
export const isAbsolute = (text: string): boolean => /[WVA]\s*\/\s*(?:°\s*)?[CKF]/.test(text)

const lengths: Readonly<Record<string, number>> = { mm: 1e-3, cm: 1e-2, m: 1, in: 0.0254 }

/** Metres in one unit of a length's text. */
export const metres = (rest: string): number | undefined => lengths[rest.trim() || 'mm']
