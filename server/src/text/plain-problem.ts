import { phrase, phraseInWords, type Phrase } from '../wording/phrase.ts'
import { lineAround } from './lines.ts'
import { shortened } from './shortened.ts'
import type { Span } from './span.ts'
import { quotedScalar } from './spelling.ts'
import type { SyntaxProblem } from './tree.ts'

/** One of YAML's own complaints: its code and first words as they come, on the characters that it is about. */
export function plainProblem(
  text: string,
  error: { code: string; message: string; pos: readonly [number, number] },
): SyntaxProblem {
  const start = Math.min(error.pos[0], text.length)
  const end = Math.min(Math.max(error.pos[1], start + 1), text.length)
  const problem = {
    code: error.code,
    message: error.message,
    span: { start: start === end ? Math.max(0, end - 1) : start, end },
  }
  const quote = error.message.startsWith('Missing closing') ? openQuote(text) : null
  return quote === null
    ? { ...problem, ...quoting(text, problem) }
    : {
        ...problem,
        code: 'open-quote',
        span: { start: quote, end: lineAround(text, quote).end },
        ...closing(text, quote),
      }
}

/** A value that begins with a sign of YAML in quotes, and one with backslashes in quotes that leave them alone. */
function quoting(text: string, { code, span: { start } }: SyntaxProblem): Pick<SyntaxProblem, 'fix'> {
  const { start: from, end: to } = lineAround(text, start)
  const before = text.slice(from, start)
  if (code === 'BAD_SCALAR_START') {
    const value = (/[{[]/.test(before) ? /^[^,{}[\]#"']+/ : /^[^#"']+/).exec(text.slice(start, to))?.[0].trimEnd()
    return value === undefined || /:(?: |$)/.test(value) ? {} : quoted(start, value, value)
  }
  const first = text.lastIndexOf('"', start)
  const value = /^"([^"'\r\n]*)"/.exec(text.slice(first, to))
  return code === 'BAD_DQ_ESCAPE' && from <= first && value ? quoted(first, value[0], value[1]!) : {}
}

function quoted(start: number, typed: string, value: string): Pick<SyntaxProblem, 'fix'> {
  const edits = [{ span: { start, end: start + typed.length }, text: quotedScalar(value) }]
  return { fix: { edits, why: phrase`the whole text in quotes`, certainty: 'guess', text: value } }
}

/** Where it is plain how far a quote reaches: to the end of a value that has a line or a place between commas for itself. */
function closing(text: string, quote: number): Pick<SyntaxProblem, 'fix'> {
  const line = lineAround(text, quote)
  const rest = text.slice(quote, line.end)
  const isInBrackets = /[{[]/.test(text.slice(line.start, quote))
  const typed = (isInBrackets ? /^["'][^"',{}[\]#:]+(?=[,}\]])/ : /^["'][^"',{}[\]#:]+(?=$| #)/)
    .exec(rest)?.[0]
    .trimEnd()
  if (typed === undefined) return {}
  const at = quote + typed.length
  const edits = [{ span: { start: at, end: at }, text: typed[0]! }]
  return { fix: { edits, why: phrase`the quote closed`, certainty: 'guess', text: typed.slice(1) } }
}

/** The same complaint as a sentence that a person understands, on visible characters. */
export function plainMessage(text: string, problem: SyntaxProblem): SyntaxProblem {
  const span = visible(text, problem)
  const here = shown(text.slice(span.start, span.end))
  const found = sentences.find(([code, words]) => code === problem.code && words.test(problem.message))
  if (!found) return { ...problem, span }
  const sentence = found[2](here)
  const { code, fix } = problem
  return { code, message: phraseInWords(sentence), sentence, span, ...(fix && { fix }) }
}

/** Where the first quote stands that is not closed on its own line. */
export function openQuote(text: string): number | null {
  const found =
    /^(?:[^"'#\r\n\u2028\u2029]|"[^"\r\n\u2028\u2029]*"|'[^'\r\n\u2028\u2029]*')*?(?:[:,[{-][ \t]*|^[ \t]*)(["'])(?:(?!\1).)*$/m.exec(
      text,
    )
  return found ? found.index + found[0].lastIndexOf(found[1]!) : null
}

type Sentence = readonly [code: string, words: RegExp, say: (here: string | Phrase) => Phrase]

const any = /(?:)/
const sentences: readonly Sentence[] = [
  [
    'open-quote',
    any,
    (here) =>
      phrase`The quote before ${typeof here === 'string' ? here.slice(1) : here} is not closed on its line: add one at the end of the text.`,
  ],
  [
    'BAD_INDENT',
    /^Flow map/,
    (here) => phrase`A { is still open before ${here}: close it with } where the fields inside it end.`,
  ],
  ['BAD_INDENT', /^Flow seq/, (here) => phrase`A [ is still open before ${here}: close it with ] where the list ends.`],
  [
    'BAD_INDENT',
    any,
    (here) =>
      phrase`${here} is not lined up with its neighbours: fields that belong together begin in the same column.`,
  ],
  [
    'UNEXPECTED_TOKEN',
    /flow-map-end|flow-seq-end|^Unexpected flow/,
    (here) => phrase`${here} closes a bracket that was never opened: take it out, or open it.`,
  ],
  [
    'UNEXPECTED_TOKEN',
    /at node end/,
    (here) => phrase`${here} follows a value that has already ended: put the whole text in quotes, or take it out.`,
  ],
  ['UNEXPECTED_TOKEN', /Unexpected , /, () => phrase`A comma is here with nothing in front of it: take one out.`],
  [
    'BLOCK_AS_IMPLICIT_KEY',
    any,
    (here) =>
      phrase`${here} is a whole value, but a line below it is indented as if it belonged to it: line that one up with its neighbours.`,
  ],
  [
    'MULTILINE_IMPLICIT_KEY',
    any,
    (here) => phrase`${here} runs on into the next line: a colon or a comma is missing after it.`,
  ],
  [
    'BLOCK_IN_FLOW',
    any,
    (here) => phrase`A comma is missing in ${here}: inside { } and [ ] commas separate the fields.`,
  ],
  [
    'MISSING_CHAR',
    /^Missing , /,
    (here) => phrase`A comma is missing before ${here}: inside { } and [ ] commas separate the fields.`,
  ],
  [
    'MISSING_CHAR',
    /^Implicit map keys/,
    (here) => phrase`${here} has no colon after it: a field is a name, a colon, a space and a value.`,
  ],
  [
    'MISSING_CHAR',
    /^Comments must/,
    () => phrase`A # begins a comment only after a space: add one, or put the text in quotes.`,
  ],
  ['MISSING_CHAR', /^Missing space after :/, (here) => phrase`A space is missing after the colon before ${here}.`],
  ['MISSING_CHAR', /^Sequence item/, (here) => phrase`${here} is in a list without the dash that begins an item.`],
  [
    'BAD_SCALAR_START',
    any,
    (here) => phrase`YAML keeps the sign at the beginning of ${here} for itself: put the text in quotes.`,
  ],
  [
    'BAD_DQ_ESCAPE',
    any,
    (here) =>
      phrase`${here} means nothing in double quotes, where \\ begins a special sign: write \\\\, or use single quotes.`,
  ],
  ['TAB_AS_INDENT', any, () => phrase`A tab is where YAML counts spaces: use spaces.`],
  [
    'TAG_RESOLVE_FAILED',
    any,
    (here) => phrase`A ! begins a type name in YAML, and ${here} is none: put the text in quotes.`,
  ],
  [
    'BAD_DIRECTIVE',
    any,
    (here) => phrase`${here} is an instruction to YAML readers that records do not need: take the line out.`,
  ],
  [
    'UNEXPECTED_TOKEN',
    any,
    (here) => phrase`YAML cannot place ${here} here: check the signs around it, or put the text in quotes.`,
  ],
  [
    'MISSING_CHAR',
    any,
    (here) => phrase`A sign is missing around ${here}: check its colon, comma, quotes and brackets.`,
  ],
]

/** The words of the complaint without blanks around them, on one line; the nearest words where it points at blanks only. */
function visible(text: string, { code, span }: SyntaxProblem): Span {
  let { start } = span
  if (/^\s*$/.test(text.slice(start, span.end))) {
    const next = text.slice(start).search(/\S/)
    start = 0 <= next ? start + next : Math.max(0, text.slice(0, start).trimEnd().length - 1)
  } else start += text.slice(start, span.end).search(/\S/)
  const { end } = lineAround(text, start)
  const wide = ['BAD_SCALAR_START', 'BLOCK_AS_IMPLICIT_KEY', 'BAD_INDENT', 'UNEXPECTED_TOKEN'].includes(code)
  const bracket = /^[{}[\],]/.test(text.slice(start))
  const words =
    wide && !bracket ? (/^[^\s][^\r\n,[\]{}#:]*/.exec(text.slice(start))?.[0].trimEnd().length ?? 1) : span.end - start
  const stop = Math.min(Math.max(start + words, start + 1), Math.max(end, start + 1), text.length)
  const trimmed = text.slice(start, stop).trimEnd().length
  return { start, end: Math.max(start + trimmed, Math.min(start + 1, text.length)) }
}

function shown(words: string): string | Phrase {
  return words === '' ? phrase`the end of the file` : shortened(words)
}
