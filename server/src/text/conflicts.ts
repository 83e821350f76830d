import { phrase, phraseInWords, type Phrase } from '../wording/phrase.ts'
import { readEdited } from './edited-tree.ts'
import { shortened } from './shortened.ts'
import type { Edit, Span } from './span.ts'
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

/**
 * A text in which git left conflicts, read as if the first versions were kept: each conflict is one problem, whose fixes keep one.
 * Lines of another tool that are left over are taken out.
 *
 * @param read  a text without markers
 * @returns     null where there are none
 */
export function readSettled(text: string, read: (text: string) => Tree): Tree | null {
  const markers = markersIn(text)
  const fences = linesLike(fence, text)
  if (markers.length + fences.length === 0) return null
  const conflicts = conflictsOf(markers)
  const strays = markers.filter(
    (one) => !conflicts.some(({ first, last }) => first.start <= one.start && one.start < last.end),
  )
  const settled = [...conflicts.flatMap(keptFirst), ...[...strays, ...fences].map(without)]
  const { root, problems, comments, effort } = readEdited(text, settled, read)
  const own = [
    ...conflicts.map((one) => open(text, one)),
    ...(strays.length > 0 ? [left(strays)] : []),
    ...(fences.length > 0 ? [fenced(fences)] : []),
  ]
  return {
    text,
    root,
    problems: [...own, ...problems].sort((a, b) => a.span.start - b.span.start),
    comments,
    ...(effort !== undefined && { effort }),
  }
}

const markersIn = (text: string) => (/^[<>=|]{7}/m.test(text) ? linesLike(marker, text) : [])

const marker = /^([<>|=])\1{6}(?:[ \t][^\r\n]*)?(?=[\r\n]|$)/gm
const fence = /^(`){3}[\w-]*[ \t]*(?=[\r\n]|$)/gm

const linesLike = (what: RegExp, text: string): readonly Marker[] =>
  Array.from(text.matchAll(what), ({ index, 0: line, 1: sign = '' }) => ({
    sign,
    start: index,
    words: index + line.trimEnd().length,
    end: index + line.length + /^(?:\r\n?|\n)?/.exec(text.slice(index + line.length))![0].length,
  }))

function conflictsOf(markers: readonly Marker[]): readonly Conflict[] {
  const signs = markers.map(({ sign }) => sign).join('')
  return Array.from(signs.matchAll(/<\|?=>/g), ({ index, 0: found }) => {
    const own = markers.slice(index, index + found.length)
    return { first: own[0]!, middle: own.slice(1, -1), last: own.at(-1)! }
  })
}

const without = ({ start, end }: Marker): Edit => ({ span: { start, end }, text: '' })

const keptFirst = ({ first, middle, last }: Conflict): readonly Edit[] => [
  without(first),
  { span: { start: middle[0]!.start, end: last.end }, text: '' },
]

const keptSecond = ({ first, middle, last }: Conflict): readonly Edit[] => [
  { span: { start: first.start, end: middle.at(-1)!.end }, text: '' },
  without(last),
]

function open(text: string, conflict: Conflict): SyntaxProblem {
  const { first, middle, last } = conflict
  const [one, other] = [
    shown(text, { start: first.end, end: middle[0]!.start }),
    shown(text, { start: middle.at(-1)!.end, end: last.start }),
  ]
  const sentence = phrase`Git left two versions here: ${one ?? phrase`nothing`} or ${other ?? phrase`nothing`}. Keep one.`
  const certainty = 'guess'
  return {
    ...said(sentence, first),
    spoils: { start: first.end, end: last.start },
    fix: { edits: keptFirst(conflict), why: phrase`the first kept`, certainty, text: one ?? '' },
    otherFix: { edits: keptSecond(conflict), why: phrase`the second kept`, certainty, text: other ?? '' },
  }
}

/** The first words of a version; null where it holds nothing. */
function shown(text: string, { start, end }: Span): string | null {
  const [line = ''] = text
    .slice(start, end)
    .trim()
    .split(/[\r\n]/)
  const words = line.trim()
  return words === '' ? null : shortened(words)
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
  const sentence = phrase`The marks of a code block (\`\`\`) are no part of a record: take them out.`
  const fix = { edits: fences.map(without), why: phrase`without markers`, certainty: 'guess', text: '' } as const
  return { ...said(sentence, fences[0]!), code: 'fence', fix }
}

const said = (sentence: Phrase, { start, words }: Marker): SyntaxProblem => ({
  code: 'conflict-markers',
  message: phraseInWords(sentence),
  sentence,
  span: { start, end: words },
})
