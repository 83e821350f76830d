import { inARow, phrase, type Phrase } from '../../wording/phrase.ts'
import { groupBy } from '../group.ts'
import { applyEdits, type Edit } from '../span.ts'
import { inventory } from '../tree-queries.ts'
import type { Entry, ListNode, ScalarNode, Tree } from '../tree.ts'
import { hazard, yamlSource, type Hazard, type HazardRule, type Fix } from './hazard.ts'
import { strays } from './strays.ts'

export const decimalComma: HazardRule = {
  id: 'decimal-comma-splits',
  severity: 'error',
  reason:
    'Inside { } and [ ] a comma separates entries, so a decimal comma cuts a number in two, and YAML does not complain.',
  source: yamlSource('7.4'),
  find: (tree) => [...inMaps(tree), ...inLists(tree)],
}

function inMaps(tree: Tree): Hazard[] {
  const byHead = groupBy(
    strays(tree).filter(({ kind }) => kind === 'decimal'),
    ({ head }) => head!,
  )
  return [...byHead].map(([head, group]) =>
    split(
      tree,
      head,
      group.map(({ entry }) => entry),
    ),
  )
}

function split(tree: Tree, head: Entry, pieces: readonly Entry[]): Hazard {
  const span = { start: head.value!.span.start, end: pieces.at(-1)!.keySpan.end }
  const typed = tree.text.slice(span.start, span.end)
  const fixes = readings(typed).map(({ text, why }, _, all): Fix => {
    const certainty = all.length === 1 && /\d,\d/.test(typed) ? 'same' : 'guess'
    return { edits: [{ span, text }], why, certainty, text }
  })
  const rest = inARow(
    pieces.map(({ key }) => key),
    ' and a stray ',
  )
  const read = phrase`YAML reads ${head.key}: ${(head.value as ScalarNode).text} and a stray ${rest}`
  const meant = choice(fixes)
  return hazard({
    message: meant
      ? phrase`${typed} should be ${meant}: the comma splits the entry inside { }, and ${read}.`
      : phrase`The comma in ${typed} splits the entry inside { }: ${read}. Write the number without commas.`,
    pointer: head.pointer,
    span,
    swallows: pieces.map(({ pointer }) => pointer),
    fixes,
  })
}

function inLists(tree: Tree): Hazard[] {
  return inventory(tree).collections.flatMap((list) => (list.kind === 'list' && list.flow ? inList(tree, list) : []))
}

/** `[5,92 A]` for its unit, or `[5,92, 6,31]` for its rhythm; `[1,2,3]` is three numbers. */
function inList(tree: Tree, list: ListNode): Hazard[] {
  const runs = tightRuns(tree, list)
  const inRhythm =
    2 <= runs.length && runs.every((run) => run.length === 2 && run.every((item) => /^-?\d+$/.test(item.text)))
  const split = runs.filter(
    (run) =>
      run.length === 2 &&
      (inRhythm || (/^[-+]?\d+(?:\.\d+)*$/.test(run[0]!.text) && /^\d+\s*[^\d\s.]/.test(run[1]!.text))),
  )
  if (split.length === 0) return []
  const span = { start: split[0]![0]!.span.start, end: split.at(-1)![1]!.span.end }
  const typed = tree.text.slice(span.start, span.end)
  const parts = split.map(([whole, fraction]) => ({ start: whole!.span.start, end: fraction!.span.end }))
  const edits = parts.map((part): Edit => ({
    span: part,
    text: readings(tree.text.slice(part.start, part.end)).at(-1)!.text,
  }))
  const text = applyEdits(tree.text, edits).slice(
    span.start,
    span.end + applyEdits(tree.text, edits).length - tree.text.length,
  )
  return [
    hazard({
      message: phrase`${typed} should be ${text}: the comma splits the item inside [ ], and YAML reads ${inARow(
        split.flat().map((item) => item.text),
        ' and ',
      )}.`,
      pointer: list.pointer,
      span,
      spoils: [list.pointer, ...list.items.flatMap((item) => (item ? [item.pointer] : []))],
      fixes: [{ edits, why: phrase`decimal points`, certainty: 'guess', text: `[${text}]` }],
    }),
  ]
}

/** The items that only a comma parts, without a space. */
function tightRuns(tree: Tree, list: ListNode): ScalarNode[][] {
  const runs: ScalarNode[][] = []
  for (const item of list.items) {
    if (item?.kind !== 'scalar' || item.style !== 'plain') return []
    const before = runs.at(-1)?.at(-1)
    if (before && tree.text.slice(before.span.end, item.span.start) === ',') runs.at(-1)!.push(item)
    else runs.push([item])
  }
  return runs
}

/** What a number with a comma can mean. Three digits behind it may be thousands as well. */
function readings(typed: string): { text: string; why: Phrase }[] {
  const [whole, lead = '', number] = /^([A-Z]{3} |[$€£])?([^\s,]*\d,\s*\d[\d,]*(?:\.\d+)?)/.exec(typed) ?? []
  if (whole === undefined || number === undefined) return []
  const unit = typed.slice(whole.length)
  const plain = number.replace(/\s/g, '')
  const commas = plain.split(',').length - 1
  const point = plain.replace(/\.(?=\d{3}[.,])/g, '').replace(',', '.')
  const decimal = { text: lead + point + unit, why: phrase`a decimal point` }
  const thousands = { text: lead + plain.replaceAll(',', '') + unit, why: phrase`the thousands comma left out` }
  if (!/^[-+]?[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/.test(plain))
    return commas === 1 && /,\d+$/.test(plain) ? [decimal] : []
  // sheets print neither thousandths of a millimetre, a watt or a dollar nor a comma before a point for decimals
  const isWhole = plain.includes('.') || ofWholes.test(unit) || lead !== ''
  return commas === 1 && !isWhole ? [thousands, decimal] : [thousands]
}

/** Units that are too small for three decimals; of currencies all but those with thousandths. */
const ofWholes = /^\s*(?:mm|Wh?|g|mAh|(?!BHD|IQD|JOD|KWD|LYD|OMR|TND)[A-Z]{3})$/

const choice = ([first, second]: readonly Fix[]): Phrase | string | undefined =>
  second ? phrase`${first!.text} or ${second.text}` : first?.text
