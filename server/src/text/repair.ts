import { lineAround } from './lines.ts'
import type { SyntaxProblem } from './tree.ts'

/** One character that stands in for another, so that every offset stays true. */
export interface Mask {
  readonly at: number
  readonly character: string
}

/**
 * The characters to read differently so that YAML gets over `problem` and the rest of the file can be read; null where
 * there is no such way. The words on the page do not change: whoever reads the tree gets what was typed.
 */
export function repair(text: string, problem: SyntaxProblem, all: readonly SyntaxProblem[]): Mask[] | null {
  for (const [codes, attempt] of repairs) {
    const masks = codes.includes(problem.code) ? attempt(text, problem.span, all) : null
    if (masks) return masks
  }
  return null
}

export function applyMasks(text: string, masks: readonly Mask[]): string {
  const units = text.split('')
  for (const { at, character } of masks) units[at] = character
  return units.join('')
}

type Span = SyntaxProblem['span']
type Attempt = (text: string, span: Span, all: readonly SyntaxProblem[]) => Mask[] | null

const repairs: readonly (readonly [codes: readonly string[], Attempt])[] = [
  [['TAB_AS_INDENT'], tabs],
  [['UNEXPECTED_TOKEN', 'BLOCK_IN_FLOW'], lonelyMinus],
  [['UNEXPECTED_TOKEN'], blockIndicator],
  [['UNEXPECTED_TOKEN', 'MISSING_CHAR'], textBehind],
  [['UNEXPECTED_TOKEN'], strayBracket],
  [['open-quote'], openQuote],
  [['MULTILINE_IMPLICIT_KEY', 'MISSING_CHAR'], keyWithoutColon],
  [['BAD_INDENT', 'UNEXPECTED_TOKEN'], keyBeforeComment],
  [['BLOCK_IN_FLOW'], missingComma],
  [['BLOCK_IN_FLOW', 'BLOCK_AS_IMPLICIT_KEY'], innerColon],
  [['BLOCK_AS_IMPLICIT_KEY'], tooFarIn],
]

/** A tab counts as one space, in every line that begins with one: the complaint names only some of them. */
function tabs(text: string): Mask[] {
  const masks: Mask[] = []
  for (const { index, 0: indent } of text.matchAll(/^ *\t[ \t]*/gm)) {
    for (let at = 0; at < indent.length; at++) if (indent[at] === '\t') masks.push({ at: index + at, character: ' ' })
  }
  return masks
}

/** `voc: - 0.38 %/K` */
function lonelyMinus(text: string, { start }: Span): Mask[] | null {
  return text[start] === '-' && /[\s,}\]]|^$/.test(text.slice(start + 1, start + 2))
    ? [{ at: start, character: '_' }]
    : null
}

/** `> 20 %`, `| 5` */
function blockIndicator(text: string, { start }: Span): Mask[] | null {
  const line = lineAround(text, start)
  const found = /^(.*?[:-][ \t]+)[>|][^ \t]*[ \t]*$/.exec(text.slice(line.start, start))
  return found ? [{ at: line.start + found[1]!.length, character: '_' }] : null
}

/** `"110" W`, `*110 W` */
function textBehind(text: string, { start }: Span): Mask[] | null {
  const line = lineAround(text, start)
  const found = /(?:(["'])[^"']*\1|(?<![^\s,[\]{}])\*[^\s,[\]{}]+)[ \t]*$/.exec(text.slice(line.start, start))
  if (!found) return null
  const first = line.start + found.index
  const opening = { at: first, character: '_' }
  return found[1] ? [opening, { at: first + found[0].trimEnd().length - 1, character: '_' }] : [opening]
}

/** A bracket that closes nothing. */
function strayBracket(text: string, { start }: Span): Mask[] | null {
  return text[start] === '}' || text[start] === ']' ? [{ at: start, character: ' ' }] : null
}

/** A quote that is not closed is taken as a letter. */
function openQuote(_: string, { start }: Span): Mask[] {
  return [{ at: start, character: '_' }]
}

/** A line without a colon is a key without a value: its last letter becomes the colon. */
function keyWithoutColon(text: string, { start, end }: Span, all: readonly SyntaxProblem[]): Mask[] | null {
  if (text[start] === undefined || /[\s,[\]{}"']/.test(text[start])) return null
  const line = lineAround(text, start)
  if (all.some((other) => other.span.start === start && other.code === 'BLOCK_IN_FLOW')) {
    return end <= line.end ? null : [{ at: line.end, character: ',' }]
  }
  if (
    text
      .slice(line.start, start)
      .trim()
      .replace(/^(?:-[ \t]*)+/, '') !== ''
  )
    return null
  const last = Math.min(end, line.end) - 1
  return start <= last ? [{ at: last, character: ':' }] : null
}

/** The same where a comment ends the line, which cuts it off from the fields below. */
function keyBeforeComment(text: string, { start }: Span): Mask[] | null {
  const line = lineAround(text, start + (text[start] === ' ' ? 1 : 0))
  const from = lineAround(text, Math.max(0, line.start - (text.startsWith('\r\n', line.start - 2) ? 2 : 1))).start
  const above = /(?:^|[\r\n])([ \t]*)(?![-?][ \t])([^\s#:"'](?:[ \t]*[^:#\s])*)[ \t]+#[^\r\n]*(?:\r\n?|\n)$/.exec(
    text.slice(from, line.start),
  )
  if (!above || above[1] !== /^[ \t]*/.exec(text.slice(line.start, line.end))![0]) return null
  return [{ at: from + above.index + above[0].indexOf(above[2]!) + above[2]!.length - 1, character: ':' }]
}

/** `{ imp: 5.92 A; voc: 22.1 V }`, `{ imp: 5.92 A voc: 22.1 V }` */
function missingComma(text: string, { start, end }: Span): Mask[] | null {
  const typed = text.slice(start, end)
  const colon = typed.indexOf(':')
  const value = typed.slice(0, Math.max(0, colon)).trimEnd()
  let name = value.length
  while (0 < name && /\w/.test(value[name - 1]!)) name--
  if (!/^[-+]?\.?\d[^,\r\n]*$/.test(value) || !/^[A-Za-z_]/.test(value.slice(name))) return null
  let at = name
  while (value[at - 1] === ' ' || value[at - 1] === '\t') at--
  if (value[at - 1] === ';') at--
  return at < name ? [{ at: start + at, character: ',' }] : null
}

/** `output: 80 % after 5 years: see sheet` */
function innerColon(text: string, { start }: Span): Mask[] | null {
  const rest = text.slice(start, lineAround(text, start).end).replace(/[ \t]#.*/, '')
  const colon = rest.search(/:(?:[ \t]|$)/)
  return colon < 0 ? null : [{ at: start + colon, character: '_' }]
}

/** A field that is indented under one which already has a value is left out. */
function tooFarIn(text: string, { start }: Span): Mask[] | null {
  const found = /^[^\r\n]*(?:\r\n?|\n)[ \t]*(?=[^\s#])/.exec(text.slice(start))
  return found ? [{ at: start + found[0].length, character: '#' }] : null
}
