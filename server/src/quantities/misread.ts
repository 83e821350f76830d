import { phrase } from '../wording/phrase.ts'
import { guess } from './draft.ts'
import type { Fix } from './quantity.ts'

/** Letters that a reader or a recogniser of print takes a digit for. */
const meant: Readonly<Record<string, string>> = {
  O: '0',
  o: '0',
  Q: '0',
  D: '0',
  I: '1',
  l: '1',
  '|': '1',
  Z: '2',
  z: '2',
  S: '5',
  s: '5',
  G: '6',
  B: '8',
}

/** A number with letters in it, from its sign to where something else begins. */
const token = /^(\s*[-+−–]?\s*)([\dOoQDIl|ZzSsGB.,]*)(?![A-Za-z])/

/** `11O W`, `l10 W`, `1S A`, `B.5 A`: letters among the digits of a number, as digits; null where there is none. */
export function looksLikeDigits(typed: string): Fix[] | null {
  const [, sign = '', number = ''] = token.exec(typed) ?? []
  if (!/\d/.test(number) && !/^[SZGB]\.?$|^[OoIl][.,]?[OoIl]*$|^[OIlZSGB][OIlZSGB.,]+$/.test(number)) return null
  const digits = number.replace(/[^\d.,]/g, (letter) => meant[letter] ?? letter)
  if (digits === number || !/^(?:\d+(?:[.,]\d*)?|[.,]\d+)$/.test(digits)) return null
  const behind = typed.slice(sign.length + number.length)
  return [guess(sign + digits + behind, phrase`a letter that looks like a digit`)]
}

/** A raised or a low dot between digits, in print the point of a decimal. */
const dot = /(\d)\s?[·•⋅∙‧・˙]\s?(?=\d)/

/** `18·6 V`, `18 6 V`, `1 8.6 V`: one number in two parts, as it may read joined; the likeliest first. */
export function joined(typed: string): Fix[] {
  const [, whole = '', more = '', behind = ''] =
    /^(\s*(?:[-+−–]\s*)?\d+[.,]\d+)\s+(\d{1,2})(?![\d.,])(.*)$/s.exec(typed) ?? []
  if (more !== '' && !/^\s*[x×/*)]/.test(behind))
    return [
      guess(whole + more + behind, phrase`no space in the number`),
      guess(whole + behind, phrase`the first number`),
    ]
  if (dot.test(typed)) return [guess(typed.replace(dot, '$1.'), phrase`a point for the dot`)]
  const [, sign = '', first = '', second = '', rest = ''] =
    /^(\s*(?:[-+−–]\s*)?)(\d{1,4})\s+(\d+(?:[.,]\d+)?)(?![\d.,])(.*)$/s.exec(typed) ?? []
  if (second === '' || /^\s*[x×/*]/.test(rest)) return []
  const asOne = guess(`${sign}${first}${second}${rest}`, phrase`no space in the number`)
  if (/[.,]/.test(second)) return first.length <= 2 ? [asOne] : []
  if (second.length > 3 || first.length + second.length > 5) return []
  return [guess(`${sign}${first}.${second}${rest}`, phrase`a point for the space`), asOne]
}
