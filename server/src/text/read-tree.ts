import { withBetterLines } from './better-lines.ts'
import { readEdited } from './edited-tree.ts'
import { foreignEncoding } from './encoding.ts'
import { parseTokens } from './parse.ts'
import { pasted } from './pasted.ts'
import { plainMessage, plainProblem } from './plain-problem.ts'
import { readNode } from './read-node.ts'
import { isJson } from './spelling.ts'
import { inventory } from './tree-queries.ts'
import { applyMasks, repair, type Mask } from './repair.ts'
import { scan } from './scan.ts'
import type { SyntaxProblem, Tree } from './tree.ts'

/** Longest text that is analysed, in UTF-16 units: a record has 2000. */
export const longestText = 256 * 1024
/** Longest broken text of which lines are tried in other columns. */
const longestRepaired = 16 * 1024
/** How many complaints are looked at each time: beyond these a file is no record. */
const mostComplaints = 50
/**
 * How often a broken file is read again; each time all complaints that can be got over are. Once a long file, or one that
 * is hardly a record.
 */
const mostRounds = (length: number, complaints: number) =>
  length <= 16 * 1024 && complaints <= 2 * mostComplaints ? 8 : 1

/**
 * Reads YAML or JSON, however broken, and never throws: what can be read is in `root`, in the words that were typed,
 * and what YAML itself complains about in `problems`, in the order of their places. Only the first document of a file is
 * read. Aliases, anchors, tags and merge keys are not followed.
 *
 * @param before  the tree of the file of which this text is a correction
 */
export function readTree(text: string, before?: Tree): Tree {
  const tree = readClean(text)
  return tree.problems.length === 0 || tree.root === null || text.length > longestRepaired || isJson(tree)
    ? tree
    : withBetterLines(tree, readClean, before)
}

/** As it was typed, but for characters that a PDF left. */
function readClean(text: string): Tree {
  const edits = pasted(text)
  if (edits.length === 0) return readAsTyped(text)
  const tree = readEdited(text, edits, readAsTyped)
  // in quotes they may be meant
  const quoted = inventory(tree).scalars.filter(({ style }) => style === 'single' || style === 'double')
  const open = edits.filter(({ span }) => !quoted.some((one) => one.span.start < span.start && span.end < one.span.end))
  return open.length === edits.length ? tree : readEdited(text, open, readAsTyped)
}

/** As `readTree`, without a way to read lines or characters better. */
export function readAsTyped(text: string): Tree {
  if (text.length > longestText) return unread(text, tooBig(text))
  const encoding = foreignEncoding(text)
  if (encoding) return unread(text, { code: 'encoding', message: `The file is in ${encoding}.`, span: firstLine(text) })
  const marker =
    text.includes('<<<<<<<') || text.includes('>>>>>>>') ? /^(?:<{7}|>{7})(?![^ \t\r\n]).*/m.exec(text) : null
  if (marker) return unread(text, conflict(marker.index, marker[0].length))

  return scan(text) ?? readWhole(text)
}

/** By the whole grammar, again and again until what a reader can get over is. */
export function readWhole(text: string): Tree {
  const problems: SyntaxProblem[] = []
  let masked = text
  for (let round = 0; ; round++) {
    const parsed = parseTokens(masked)
    if (parsed === 'too-deep') return unread(text, tooDeep(text))
    const { document, second } = parsed
    const all = [...document.errors, ...document.warnings]
    const complaints = all.slice(0, mostComplaints).map((error) => plainProblem(text, error))
    const repaired = complaints.map((problem) => ({ problem, masks: repair(masked, problem, complaints) ?? [] }))
    const masks = repaired.flatMap((each) => each.masks)
    if (masks.length === 0 || round >= mostRounds(text.length, all.length)) {
      if (second !== null) problems.push(secondDocument(text, second))
      const comments = parsed.comments.filter(({ span }) => text[span.start] === '#')
      const root = readNode(text, document.contents, '', 0)
      return {
        text,
        root,
        problems: inOrder([...problems, ...complaints]).map((problem) => plainMessage(text, problem)),
        comments,
      }
    }
    problems.push(
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

const noColon = { code: 'MISSING_CHAR', message: 'Implicit map keys need to be followed by map values' }

/** One complaint a place: YAML often has several about the same slip. */
function inOrder(problems: readonly SyntaxProblem[]): SyntaxProblem[] {
  const sorted = [...problems].sort((a, b) => a.span.start - b.span.start)
  return sorted.filter((problem, index) => index === 0 || sorted[index - 1]!.span.start !== problem.span.start)
}

function unread(text: string, problem: SyntaxProblem): Tree {
  return { text, root: null, problems: [problem], comments: [] }
}

function tooBig(text: string): SyntaxProblem {
  const kilobytes = Math.round(text.length / 1024)
  const message = `The file has ${kilobytes} KiB and was not read; a record has a few, and ${longestText / 1024} is the limit.`
  return { code: 'too-big', message, span: firstLine(text) }
}

function tooDeep(text: string): SyntaxProblem {
  const message = 'The brackets of this file nest more than 64 levels deep, so it was not read; a record needs about 4.'
  return { code: 'too-deep', message, span: firstLine(text) }
}

function conflict(start: number, length: number): SyntaxProblem {
  const message = 'A git conflict marker stands here: settle the conflict, then the file can be read.'
  return { code: 'conflict-markers', message, span: { start, end: start + length } }
}

function secondDocument(text: string, offset: number): SyntaxProblem {
  const dashes = text.lastIndexOf('---', offset)
  const start = dashes < 0 ? Math.min(offset, Math.max(0, text.length - 1)) : dashes
  const message = 'A second record starts here; one file holds one record, and only the first was read.'
  return { code: 'second-document', message, span: { start, end: Math.min(text.length, start + 3) } }
}

function firstLine(text: string) {
  return { start: 0, end: Math.max(0, text.search(/[\r\n]|$/)) }
}
