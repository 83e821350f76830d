import { phrase, phraseInWords, type Phrase } from '../wording/phrase.ts'
import { readEdited } from './edited-tree.ts'
import { shortened } from './shortened.ts'
import type { Edit, Span } from './span.ts'
import { inventory } from './tree-queries.ts'
import type { SyntaxProblem, Tree } from './tree.ts'

/** A line that git wrote, with its ending. */
interface Marker {
  readonly sign: string
  readonly start: number
  readonly words: number
  readonly end: number
}

/** Two versions of some lines, and between the second and the third marker what both began as, where git wrote it. */
interface Conflict {
  readonly first: Marker
  readonly middle: readonly Marker[]
  readonly last: Marker
}

/** How a text with markers is read. */
interface Readers {
  /** As if no line were a marker. */
  readonly asTyped: () => Tree
  /** A text without markers. */
  readonly settled: (text: string) => Tree
}

/** Beyond these a file was not looked at since git left it. */
const mostConflicts = 20

/**
 * A text in which git left conflicts, read as if one version of each were kept: the first, or the second where that has more
 * fields, so that none of them seems to be missing. Each conflict is one problem, whose fixes keep one.
 * Lines of another tool that are left over are taken out.
 *
 * @returns null where there are none
 */
export function readSettled(text: string, { asTyped, settled }: Readers): Tree | null {
  const [allMarkers, allFences] = [markersIn(text), linesLike(fence, text)]
  if (allMarkers.length + allFences.length === 0) return null
  const pairs = conflictsOf(allMarkers)
  const isMeant = pairs.length > 0 ? () => false : meantIn(asTyped())
  const markers = allMarkers.filter((one) => !isMeant(one))
  const fences = allFences.filter((one) => !isMeant(one))
  if (markers.length + fences.length === 0) return null
  const one = asOneVersion(text, markers, pairs)
  const isLeftOut = ({ start }: Marker) => one.some(({ span }) => span.start <= start && start < span.end)
  const edits = [...one, ...fences.filter((line) => !isLeftOut(line)).map(without)]
  const { root, problems, comments, effort } = readEdited(text, edits, settled)
  const own = [...problemsOf(text, markers, pairs), ...(fences.length > 0 ? [fenced(fences)] : [])]
  return {
    text,
    root,
    problems: [...own, ...problems].sort((a, b) => a.span.start - b.span.start),
    comments,
    ...(effort !== undefined && { effort }),
  }
}

const markersIn = (text: string) => (/[<>=|]{7}/.test(text) ? linesLike(marker, text) : [])

const marker = /(?<=^\uFEFF?)([<>|=])\1{6}(?:[ \t][^\r\n]*)?(?=[\r\n]|$)/gm
const fence = /(?<=^\uFEFF?)(`){3}[\w-]*[ \t]*(?=[\r\n]|$)/gm

const linesLike = (what: RegExp, text: string): readonly Marker[] =>
  Array.from(text.matchAll(what), ({ index, 0: line, 1: sign = '' }) => ({
    sign,
    start: index,
    words: index + line.trimEnd().length,
    end: endOfLine(text, index + line.length),
  }))

/** Behind the line break at an offset. */
const endOfLine = (text: string, at: number) => at + (text.startsWith('\r\n', at) ? 2 : Math.min(1, text.length - at))

/** Whether a line belongs to a text over several lines, which is read without a complaint. */
function meantIn(tree: Tree): (line: Marker) => boolean {
  if (tree.problems.length > 0) return () => false
  const texts = inventory(tree).scalars.filter(({ span }) => /[\r\n]/.test(tree.text.slice(span.start, span.end)))
  return ({ start, words }) => texts.some(({ span }) => span.start <= start && words <= span.end)
}

function conflictsOf(markers: readonly Marker[]): readonly Conflict[] {
  const signs = markers.map(({ sign }) => sign).join('')
  return Array.from(signs.matchAll(/<\|?=>/g), ({ index, 0: found }) => {
    const own = markers.slice(index, index + found.length)
    return { first: own[0]!, middle: own.slice(1, -1), last: own.at(-1)! }
  })
}

/** What is reported of markers: each conflict, but one for all where they are too many, and one where they do not pair up. */
function problemsOf(text: string, markers: readonly Marker[], pairs: readonly Conflict[]): readonly SyntaxProblem[] {
  if (pairs.length > mostConflicts) {
    const sentence = phrase`Git left ${pairs.length} conflicts in this file, the first of them here. Keep one version of each.`
    return [unsettled(sentence, markers)]
  }
  const paired = new Set(pairs.flatMap(({ first, middle, last }) => [first, ...middle, last]))
  const strays = markers.filter((one) => !paired.has(one))
  if (strays.length === 0) return pairs.map((one) => open(text, one))
  if (!isTangled(text, strays)) return [...pairs.map((one) => open(text, one)), left(strays)]
  const [{ start }, { end }] = [strays[0]!, strays.at(-1)!]
  const within = (one: Marker) => start <= one.start && one.start < end
  const sentence = phrase`The markers of a git conflict do not pair up from here on: keep one version, and take the markers out.`
  return [
    unsettled(sentence, markers.filter(within)),
    ...pairs.filter(({ first }) => !within(first)).map((one) => open(text, one)),
  ]
}

/** Whether there are markers of several kinds with lines between them, which may be versions. */
const isTangled = (text: string, strays: readonly Marker[]) =>
  strays.some(({ sign }) => sign !== strays[0]!.sign) &&
  strays.some(({ end }, i) => i + 1 < strays.length && text.slice(end, strays[i + 1]!.start).trim() !== '')

/** A problem that only a person can settle. */
const unsettled = (sentence: Phrase, markers: readonly Marker[]): SyntaxProblem => ({
  ...said(sentence, markers[0]!),
  spoils: { start: markers[0]!.start, end: markers.at(-1)!.end },
})

const without = ({ start, end }: Marker): Edit => ({ span: { start, end }, text: '' })

/** What leaves one version of each conflict. */
function asOneVersion(text: string, markers: readonly Marker[], pairs: readonly Conflict[]): readonly Edit[] {
  const seconds = pairs.filter((pair) => hasMoreFields(text, pair))
  const others = asFirstVersion(markers).filter(
    ({ span }) => !seconds.some(({ first, last }) => first.start <= span.start && span.start < last.end),
  )
  return [...others, ...seconds.flatMap(keptSecond)]
}

/** Whether more fields are only in the second version than only in the first. */
function hasMoreFields(text: string, conflict: Conflict): boolean {
  const [one, other] = versionsOf(conflict).map(({ start, end }) => namesIn(text.slice(start, end)))
  const isNew = (name: string) => !one!.includes(name)
  return other!.filter(isNew).length > one!.filter((name) => !other!.includes(name)).length
}

const namesIn = (text: string): readonly string[] =>
  text.replaceAll(/(?:^|\s)#.*/g, '').match(/(?<![\w-])[\w-]+(?=:\s)/g) ?? []

/** Of a conflict that does not end it is the last version, so that nothing is read twice. Where none began, all stays. */
function asFirstVersion(markers: readonly Marker[]): readonly Edit[] {
  let depth = 0
  return markers.map(({ sign, start, end }, i) => {
    const next = markers[i + 1]
    if (sign === '<') depth++
    if (sign === '>') depth = Math.max(0, depth - 1)
    const [, middle, last] = next?.sign === '|' ? markers.slice(i + 1, i + 4) : markers.slice(i, i + 3)
    const isOther =
      (sign === '=' && next?.sign === '>') ||
      sign === '|' ||
      (sign === '<' && middle?.sign === '=' && last?.sign !== '>')
    return { span: { start, end: depth > 0 && next && isOther ? next.start : end }, text: '' }
  })
}

const versionsOf = ({ first, middle, last }: Conflict): readonly [Span, Span] => [
  { start: first.end, end: middle[0]!.start },
  { start: middle.at(-1)!.end, end: last.start },
]

const keptFirst = ({ first, middle, last }: Conflict): readonly Edit[] => [
  without(first),
  { span: { start: middle[0]!.start, end: last.end }, text: '' },
]

const keptSecond = ({ first, middle, last }: Conflict): readonly Edit[] => [
  { span: { start: first.start, end: middle.at(-1)!.end }, text: '' },
  without(last),
]

function open(text: string, conflict: Conflict): SyntaxProblem {
  const { first, last } = conflict
  const versions = versionsOf(conflict)
  const [one, other] = shown(linesIn(text, versions[0]), linesIn(text, versions[1]))
  const sentence = phrase`Git left two versions here: ${one ?? phrase`nothing`} or ${other ?? phrase`nothing`}. Keep one.`
  const certainty = 'guess'
  return {
    ...said(sentence, first),
    spoils: { start: first.start, end: last.end },
    fix: { edits: keptFirst(conflict), why: phrase`the first kept`, certainty, text: one ?? '' },
    otherFix: { edits: keptSecond(conflict), why: phrase`the second kept`, certainty, text: other ?? '' },
  }
}

const linesIn = (text: string, { start, end }: Span): readonly string[] =>
  text
    .slice(start, end)
    .split(/\r\n?|\n/)
    .map((line) => line.trim())
    .filter((line) => line !== '')

/** Where two versions differ, the first line of each; null where it has nothing there. */
function shown(one: readonly string[], other: readonly string[]): readonly [string | null, string | null] {
  const shorter = Math.min(one.length, other.length)
  let alike = 0
  while (alike < shorter && one[alike] === other[alike]) alike++
  if (alike === one.length && alike === other.length) alike = 0
  let below = 0
  while (below < shorter - alike && one.at(-1 - below) === other.at(-1 - below)) below++
  const first = (lines: readonly string[]) => (alike < lines.length - below ? shortened(lines[alike]!) : null)
  return [first(one), first(other)]
}

function left(markers: readonly Marker[]): SyntaxProblem {
  const sentence =
    markers.length === 1
      ? phrase`A marker of a git conflict was left here: take the line out.`
      : phrase`Markers of a git conflict were left here: take these lines out.`
  const fix = { edits: markers.map(without), why: phrase`without markers`, certainty: 'guess', text: '' } as const
  return { ...said(sentence, markers[0]!), fix }
}

/** A record that was copied with the marks of a code block around it. */
function fenced(fences: readonly Marker[]): SyntaxProblem {
  const sentence = phrase`The marks of a code block (\`\`\`) are not part of a record: take them out.`
  const fix = { edits: fences.map(without), why: phrase`without markers`, certainty: 'guess', text: '' } as const
  return { ...said(sentence, fences[0]!), code: 'fence', fix }
}

const said = (sentence: Phrase, { start, words }: Marker): SyntaxProblem => ({
  code: 'conflict-markers',
  message: phraseInWords(sentence),
  sentence,
  span: { start, end: words },
})
