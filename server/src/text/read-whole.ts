import { phrase, phraseInWords } from '../wording/phrase.ts'
import { parseTokens } from './parse.ts'
import { plainMessage, plainProblem } from './plain-problem.ts'
import { readNode } from './read-node.ts'
import { applyMasks, repair, type Mask } from './repair.ts'
import type { Span } from './span.ts'
import type { Comment, Node, SyntaxProblem, Tree } from './tree.ts'

/** How many complaints are looked at each time: beyond these a file is no record. */
const mostComplaints = 50
/**
 * How often a broken file is read again; each time all complaints that can be got over are. Once a long file, or one that
 * is hardly a record.
 */
const mostRounds = (length: number, complaints: number) =>
  length <= 16 * 1024 && complaints <= 2 * mostComplaints ? 8 : 1

/** By the whole grammar of YAML. */
export function readWhole(text: string): Tree {
  const read = readInRounds(text)
  if (read === 'too-deep') return unread(text, tooDeep(text))
  const { root, gotOver, left, second, comments, rounds } = read
  const problems = [...gotOver, ...left, ...(second === null ? [] : [secondDocument(text, second)])]
  return {
    text,
    root,
    problems: inOrder(problems).map((problem) => plainMessage(text, problem)),
    comments,
    effort: rounds * text.length,
  }
}

/** What YAML makes of a text, and its complaints in its own words. */
interface InRounds {
  readonly root: Node | null
  /** Complaints that were got over, so that what follows them was read, and the others. */
  readonly gotOver: readonly SyntaxProblem[]
  readonly left: readonly SyntaxProblem[]
  /** Where a second document of the file starts. */
  readonly second: number | null
  readonly comments: readonly Comment[]
  readonly rounds: number
}

/** By the whole grammar, again and again until what a reader can get over is. */
export function readInRounds(text: string): InRounds | 'too-deep' {
  const gotOver: SyntaxProblem[] = []
  let masked = text
  for (let round = 0; ; round++) {
    const parsed = parseTokens(masked)
    if (parsed === 'too-deep') return parsed
    const { document, second } = parsed
    const all = [...document.errors, ...document.warnings]
    const complaints = all.slice(0, mostComplaints).map((error) => plainProblem(text, error))
    const repaired = complaints.map((problem) => ({ problem, masks: repair(masked, problem, complaints) ?? [] }))
    const masks = repaired.flatMap((each) => each.masks)
    if (masks.length === 0 || round >= mostRounds(text.length, all.length)) {
      const comments = parsed.comments.filter(({ span }) => text[span.start] === '#')
      return {
        root: readNode(text, document.contents, '', 0),
        gotOver,
        left: complaints,
        second,
        comments,
        rounds: round + 1,
      }
    }
    gotOver.push(
      ...repaired.filter((each) => each.masks.length > 0).map(({ problem, masks }) => placed(problem, masks)),
    )
    masked = applyMasks(masked, masks)
  }
}

/** YAML misses a colon on the line below, as a rule; it belongs where the line without one ends. */
function placed(problem: SyntaxProblem, masks: readonly Mask[]): SyntaxProblem {
  const colon = masks.find(({ character }) => character === ':')
  return colon ? { ...noColon, span: { start: colon.at, end: colon.at + 1 } } : problem
}

export const noColon = { code: 'MISSING_CHAR', message: 'Implicit map keys need to be followed by map values' }

/** One complaint a place: YAML often has several about the same slip. */
export function inOrder(problems: readonly SyntaxProblem[]): SyntaxProblem[] {
  const sorted = [...problems].sort((a, b) => a.span.start - b.span.start)
  return sorted.filter((problem, index) => index === 0 || sorted[index - 1]!.span.start !== problem.span.start)
}

export function unread(text: string, problem: SyntaxProblem): Tree {
  return { text, root: null, problems: [problem], comments: [] }
}

function tooDeep(text: string): SyntaxProblem {
  const sentence = phrase`The fields of this file nest more than 64 levels deep, so it was not read; a record needs about 4.`
  return { code: 'too-deep', message: phraseInWords(sentence), sentence, span: firstLine(text) }
}

function secondDocument(text: string, offset: number): SyntaxProblem {
  const dashes = text.lastIndexOf('---', offset)
  const start = dashes < 0 ? Math.min(offset, Math.max(0, text.length - 1)) : dashes
  const sentence = phrase`A second record starts here; one file holds one record, and only the first was read.`
  return {
    code: 'second-document',
    message: phraseInWords(sentence),
    sentence,
    span: { start, end: Math.min(text.length, start + 3) },
  }
}

export function firstLine(text: string): Span {
  return { start: 0, end: Math.max(0, text.search(/[\r\n]|$/)) }
}
