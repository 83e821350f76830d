import { phrase, type Phrase } from '../../wording/phrase.ts'
import { lineAround } from '../lines.ts'
import { isBlank, pasted } from '../pasted.ts'
import { readAsTyped } from '../read-tree.ts'
import type { Edit } from '../span.ts'
import { entriesOf, inventory } from '../tree-queries.ts'
import type { ScalarNode, Tree } from '../tree.ts'
import { hazard, yamlSource, type HazardRule } from './hazard.ts'

export const pastedCharacters: HazardRule = {
  id: 'pasted-characters',
  severity: 'error',
  reason: 'YAML knows only the plain space; no-break spaces and soft hyphens, as PDFs have them, are letters to it.',
  source: yamlSource('6.1'),
  find: (tree) => {
    const edits = pasted(tree.text).filter(
      (one) => !tree.comments.some(({ span }) => isIn(one.span.start, span)) && !isInQuotes(scalarAt(tree, one), one),
    )
    if (edits.length === 0) return []
    const raw = readAsTyped(tree.text)
    const isHarmless = raw.problems.length <= tree.problems.length && keys(raw) === keys(tree)
    const first = edits.find((one) => !isIn(one.span.start, scalarAt(tree, one)?.span)) ?? edits[0]!
    const scalar = inventory(tree).scalars.find(({ span }) => isIn(first.span.start, span))
    const sentence = said(tree.text, first, isHarmless)
    const more = edits.length - 1
    return [
      hazard({
        message: more > 0 ? phrase`${sentence} ${String(more)} more in this file.` : sentence,
        ...(isHarmless && { severity: 'hint' as const }),
        pointer: scalar?.pointer ?? '',
        span: first.span,
        spoils: [],
        explains: [],
        fixes: [
          {
            edits,
            why:
              more > 0
                ? phrase`all ${String(edits.length)} cleaned`
                : first.text === ''
                  ? phrase`taken out`
                  : first.text === ' '
                    ? phrase`a plain space`
                    : phrase`a plain sign`,
            certainty: 'same',
            text: scalar?.text ?? '',
          },
        ],
      }),
    ]
  },
}

/** Where it may be meant. */
const isInQuotes = (scalar: ScalarNode | undefined, { span }: Edit) =>
  (scalar?.style === 'single' || scalar?.style === 'double') &&
  scalar.span.start < span.start &&
  span.end < scalar.span.end

const isIn = (at: number, span: { start: number; end: number } | undefined) =>
  span !== undefined && span.start <= at && at < span.end

const scalarAt = (tree: Tree, { span }: Edit) => inventory(tree).scalars.find((one) => isIn(span.start, one.span))

const keys = (tree: Tree) =>
  entriesOf(tree)
    .map(({ entry }) => entry.pointer)
    .join('\n')

function said(text: string, { span: { start } }: Edit, isHarmless: boolean): Phrase {
  const name =
    names[text[start]!] ?? (isBlank(text[start]!) ? phrase`a no-break space` : phrase`an invisible character`)
  const line = lineAround(text, start)
  const before = text.slice(line.start, start).trim()
  const word = before.split(/\s/).at(-1)!
  const at = word === '' ? phrase`at the start of a line` : phrase`after ${word}`
  return isHarmless
    ? phrase`There is ${name} ${at}, as PDFs have it; other tools stop at it.`
    : isBlank(text[start]!)
      ? phrase`There is ${name} ${at}, as PDFs have it; YAML needs a plain one.`
      : phrase`There is ${name} ${at}, as PDFs have it; YAML takes it for a letter.`
}

const names: Readonly<Record<string, Phrase>> = {
  ...Object.fromEntries(
    [...'\u2018\u2019\u201A\u201B\u201C\u201D\u201E\u201F\u00AB\u00BB'].map((sign) => [sign, phrase`a curly quote`]),
  ),
  '\uFF1A': phrase`a wide colon`,
  '\uFE55': phrase`a wide colon`,
  '\u00AD': phrase`a soft hyphen`,
  '\u200B': phrase`an invisible space`,
}
