import { decimalsOf } from './printed.ts'

/** What a hand may have done to a number, with the share of slips of that kind. */
export type EditKind =
  | 'digits swapped'
  | 'digit dropped'
  | 'digit doubled'
  | 'digit added'
  | 'neighbouring key'
  | 'point dropped'
  | 'point moved'
  | 'sign lost'

export interface Edit {
  readonly kind: EditKind
  /** The number as it may have been meant. */
  readonly number: string
  /** Logarithm of the chance that just this was mistyped, given that this kind happened to this field. */
  readonly chance: number
}

/** Keys beside each digit of the top row of a keyboard. */
const beside = ['9', '2', '13', '24', '35', '46', '57', '68', '79', '80']

/**
 * Numbers that one slip of the hand may have turned into `typed`.
 *
 * @param decimals how many decimals such a number usually has, for those whose last zeros a moved point lost
 */
export function edits(typed: string, decimals: number, atLeast: number): readonly Edit[] {
  const sign = typed.startsWith('-') ? '-' : ''
  const body = typed.slice(sign.length)
  const found = new Map<string, Edit>()
  const add = (kind: EditKind, text: string, chance: number) => {
    if (!/^(0|[1-9]\d*)(\.\d+)?$/.test(text) || Number(text) === 0 || text === body) return
    const number = sign + text
    if (!(found.get(number)?.chance! >= chance)) found.set(number, { kind, number, chance })
  }
  swapped(body, add)
  dropped(body, add)
  doubled(body, add)
  added(body, add)
  neighbouring(body, add)
  pointDropped(body, add)
  pointMoved(body, decimals, atLeast, add)
  if (!sign) found.set(`-${body}`, { kind: 'sign lost', number: `-${body}`, chance: 0 })
  return [...found.values()]
}

type Add = (kind: EditKind, text: string, chance: number) => void
const digit = (c: string | undefined) => c !== undefined && '0' <= c && c <= '9'
const put = (text: string, at: number, count: number, what: string) => text.slice(0, at) + what + text.slice(at + count)

function swapped(text: string, add: Add): void {
  const chance = -Math.log(Math.max(1, text.length - 2))
  for (let i = 0; i + 1 < text.length; i++) {
    const across = text[i + 1] === '.' ? 1 : 0
    const j = i + 1 + across
    if (digit(text[i]) && digit(text[j]) && text[i] !== text[j])
      add(
        'digits swapped',
        text.slice(0, i) + text[j]! + text.slice(i + 1, j) + text[i]! + text.slice(j + 1),
        chance - 2 * across,
      )
  }
}

function dropped(text: string, add: Add): void {
  const chance = -Math.log(text.length + 1)
  for (let d = 0; d < 10; d++) {
    for (let i = 0; i <= text.length; i++) add('digit dropped', put(text, i, 0, String(d)), chance)
    if (text.startsWith('0.')) add('digit dropped', d + text.slice(1), chance)
  }
}

function doubled(text: string, add: Add): void {
  for (let i = 0; i + 1 < text.length; i++)
    if (digit(text[i]) && text[i] === text[i + 1]) add('digit doubled', put(text, i, 1, ''), -Math.log(text.length - 1))
}

/** One digit too many, such as that of a footnote or of a key hit as well, and a key held down; rarer than one that is doubled. */
function added(text: string, add: Add): void {
  const chance = -Math.log(text.length) - 2.5
  for (let i = 0; i < text.length; i++) {
    if (!digit(text[i])) continue
    // behind decimals it changes next to nothing, and nothing would tell
    const isFootnote = i === text.length - 1 && '123'.includes(text[i]!) && !text.includes('.')
    if (text[i] !== text[i + 1] && text[i] !== text[i - 1])
      add('digit added', put(text, i, 1, ''), chance + (isFootnote ? 1 : 0))
    if (text[i] === text[i + 1] && text[i] === text[i + 2]) add('digit added', put(text, i, 2, ''), chance)
  }
}

function neighbouring(text: string, add: Add): void {
  for (let i = 0; i < text.length; i++)
    for (let d = 0; d < 10; d++)
      if (digit(text[i]) && beside[d]!.includes(text[i]!))
        add('neighbouring key', put(text, i, 1, String(d)), -Math.log(text.length * beside[d]!.length))
}

function pointDropped(text: string, add: Add): void {
  if (text.includes('.')) return
  for (let i = 1; i < text.length; i++) add('point dropped', put(text, i, 0, '.'), 0)
  for (const zeros of ['', '0', '00']) add('point dropped', `0.${zeros}${text}`, 0)
}

function pointMoved(text: string, decimals: number, atLeast: number, add: Add): void {
  for (const [power, chance] of [
    [1, -0.7],
    [-1, -0.7],
    [2, -3],
    [-2, -3],
    [3, -4],
    [-3, -4],
  ] as const) {
    const fields = Math.max(0, decimalsOf(text) - power)
    const exact = (Number(text) * 10 ** power).toFixed(fields)
    if (!/[1-9]/.test(exact)) continue
    if (fields < decimals) add('point moved', Number(exact).toFixed(decimals), chance)
    if (fields < atLeast) add('point moved', Number(exact).toFixed(atLeast), chance - 1)
    else add('point moved', exact, chance - (fields < decimals ? 1 : 0))
  }
}
