/** A text in plain characters, with the way back to the characters that were typed. */
export interface Plain {
  readonly typed: string
  readonly text: string
  /** Offset in `typed` where the character at `i` of `text` starts; `i` may be the length. */
  start(i: number): number
  /** Offset in `typed` behind the character before `i`. */
  end(i: number): number
  /** Places in `text` where a look-alike was read as the character that was meant. */
  readonly lookalikes: readonly number[]
}

/**
 * Reads look-alikes of a PDF or a keyboard as what they mean: dashes as minus, the ordinal sign as degree, no-break and
 * thin blanks as blanks, full-width digits, primes, one-character fractions; and Unicode's compatibility forms (NFKC).
 */
export function plain(typed: string): Plain {
  const { length } = typed
  const [mark = ''] = starred.exec(typed) ?? []
  if (mark !== '') {
    const at = typed.indexOf(mark)
    const without = plain(typed.replace(mark, ' '.repeat(mark.length)))
    const from = Array.from(without.text).findIndex((_, i) => without.start(i) === at)
    return { ...without, typed, lookalikes: [...without.lookalikes, ...Array.from(mark, (_, i) => from + i)] }
  }
  if (/^[ -~°±²Ω]*$/.test(typed) && !/\d²/.test(typed)) {
    const text = typed.replaceAll('²', '2')
    return { typed, text, start: (i) => Math.min(i, length), end: (i) => Math.min(i, length), lookalikes: [] }
  }
  let text = ''
  const starts: number[] = []
  const ends: number[] = []
  const lookalikes: number[] = []
  let at = 0
  for (const char of typed) {
    const isFootnote = raised.test(char) && /\d\s*$/.test(text)
    const meant = isFootnote ? ' ' : read(char, text)
    if (isFootnote || surprising.test(char)) lookalikes.push(text.length)
    for (let i = 0; i < meant.length; i++) {
      starts.push(at)
      ends.push(at + char.length)
    }
    text += meant
    at += char.length
  }
  return { typed, text, start: (i) => starts[i] ?? length, end: (i) => ends[i - 1] ?? 0, lookalikes }
}

/** Worth a quiet fix: they look right and are not. The minus sign U+2212, `℃`, `µ` and blanks are right as they are. */
const surprising = /[‐‑‒–—―﹣－º˚⁰０-９．，％]/u

/** The raised digit of a footnote behind a number: `18.6¹ V`. Units have their own behind letters. */
const raised = /[¹²³⁴-⁹]/u

/** A footnote's star and number behind a number: `18.6*1 V`, `18.6 *) V`. Two panels may be written `160*2 W`. */
const starred = /(?<=\d ?)\*(?:1(?![\d.,])|[1-9]?\))/

const table: Readonly<Record<string, string>> = {
  º: '°',
  '˚': '°',
  '⁰': '°',
  '’': "'",
  '‘': "'",
  '′': "'",
  '″': '"',
  '”': '"',
  '“': '"',
  '⁄': '/',
  '∕': '/',
  '∼': '~',
  '≈': '~',
  '〜': '~',
  '×': 'x',
  '·': '·',
  '\t': ' ',
}

function read(char: string, before: string): string {
  const known = table[char]
  if (known !== undefined) return known
  if (/[‐‑‒–—―−﹣－]/u.test(char)) return '-'
  if (/[\u200B-\u200D\u2060\uFEFF\u00AD]/u.test(char)) return ''
  if (/\s/u.test(char)) return ' '
  const folded = char.normalize('NFKC').replaceAll('⁄', '/')
  // one-character fractions: 46½ is 46 1/2
  return /^\d+\/\d+$/.test(folded) && /\d$/.test(before) ? ` ${folded}` : folded
}
