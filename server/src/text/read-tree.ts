import { phrase, phraseInWords, type Phrase } from '../wording/phrase.ts'
import { withBetterLines } from './better-lines.ts'
import { readSettled } from './conflicts.ts'
import { readEdited } from './edited-tree.ts'
import { foreignEncoding, notText } from './encoding.ts'
import { lineAround } from './lines.ts'
import { tightColons, withMisreadLines } from './misread-lines.ts'
import { readWithoutMargin } from './margins.ts'
import { pasted } from './pasted.ts'
import { readLine } from './read-line.ts'
import { firstLine, readWhole, unread } from './read-whole.ts'
import { isJson } from './spelling.ts'
import { readWithoutTabs } from './tabs.ts'
import { inventory } from './tree-queries.ts'
import { scan, scanAround, treeOrNull } from './scan.ts'
import type { Shape } from './shape.ts'
import type { SyntaxProblem, Tree } from './tree.ts'

/** Longest text that is analysed, in UTF-16 units: a record has 2000. */
export const longestText = 256 * 1024
/** Longest broken text of which lines are tried in other columns. */
const longestRepaired = 16 * 1024

/**
 * Reads YAML or JSON, however broken, and never throws: what can be read is in `root`, in the words that were typed,
 * and what YAML itself complains about in `problems`, in the order of their places. Only the first document of a file is
 * read. Aliases, anchors, tags and merge keys are not followed.
 *
 * @param shape   of the fields that are expected, so that broken lines are read as they are meant
 * @param before  the tree of the file of which this text is a correction
 */
export function readTree(text: string, shape?: Shape, before?: Tree): Tree {
  let typed: Tree | undefined
  const asTyped = () => (typed ??= readClean(text))
  const read = (one: string) => readTree(one, shape)
  const settled = text.length <= longestText && readSettled(text, { asTyped, settled: read })
  if (settled) return settled
  const tree = asTyped()
  const bare =
    shape && text.length <= longestRepaired ? readWithoutMargin(tree, shape, { quickly: readClean, read }) : null
  if (bare) return bare
  if (tree.root === null || longestRepaired < text.length || isJson(tree)) return tree
  const better =
    tree.problems.length === 0 ? tree : withBetterLines(tree, { read: readClean, quickly: readPlain, shape }, before)
  return (shape && withMisreadLines(better, tightColons(text), shape, readClean)) ?? better
}

/**
 * A tree with lines parted that hold several fields, where that gives each its place.
 *
 * @param places  offsets in lines with a value that could not be understood
 * @returns       null where there are none
 */
export const readMisread = (tree: Tree, places: readonly number[], shape: Shape): Tree | null =>
  longestRepaired < tree.text.length || isJson(tree) ? null : withMisreadLines(tree, places, shape, readClean)

/** Where nearly all lines are plain, without the whole grammar. */
const readPlain = (text: string): Tree | number => (pasted(text).length > 0 ? 0 : inLines(text))

const inLines = (text: string): Tree | number => scan(text) ?? scanAround(text, readLine)

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
  const plain = scan(text)
  if (plain) return plain
  const what = notText(text)
  if (what !== null) return unread(text, renamed(text, what))
  const encoding = foreignEncoding(text)
  if (encoding) return unread(text, { code: 'encoding', message: `The file is in ${encoding}.`, span: firstLine(text) })
  if (loneReturn.test(text)) return readWithLineFeeds(text)
  const tree = scanAround(text, readLine)
  if (typeof tree !== 'number') return tree
  const whole = readWhole(text)
  return whole.problems.length > 0 ? (readWithoutTabs(text, (tried) => treeOrNull(inLines(tried))) ?? whole) : whole
}

/** The end of a line on old machines, which YAML's readers do not all take for one. */
const loneReturn = /\r(?!\n)/

function readWithLineFeeds(text: string): Tree {
  const returns = [...text.matchAll(/\r(?!\n)/g)]
  const edits = returns.map(({ index }) => ({ span: { start: index, end: index + 1 }, text: '\n' }))
  // of the same length, so that every place stays
  const tree = readAsTyped(text.replaceAll(/\r(?!\n)/g, '\n'))
  const sentence = phrase`Lines end with a carriage return alone (CR), which most readers do not take for an end: use LF or CR LF.`
  const fix = { edits, why: phrase`line feeds (LF)`, certainty: 'same', text: 'LF' } as const
  const problem = {
    code: 'lone-return',
    message: phraseInWords(sentence),
    sentence,
    span: lineAround(text, returns[0]!.index),
    fix,
  }
  return { ...tree, text, problems: [problem, ...tree.problems] }
}

function renamed(text: string, what: Phrase): SyntaxProblem {
  const sentence = phrase`The file is ${what}, not a record, and was not read.`
  return { code: 'no-text', message: phraseInWords(sentence), sentence, span: firstLine(text) }
}

function tooBig(text: string): SyntaxProblem {
  const kilobytes = Math.round(text.length / 1024)
  const sentence = phrase`The file has ${kilobytes} KiB and was not read; a record has a few, and ${longestText / 1024} is the limit.`
  return { code: 'too-big', message: phraseInWords(sentence), sentence, span: firstLine(text) }
}
