import type { Fix, Found } from '../findings/found.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { Edit } from '../text/span.ts'
import { applyEdits } from '../text/span.ts'
import { duplicateKey } from '../text/hazards/duplicate-key.ts'
import { nodeAtPointer } from '../text/tree-queries.ts'
import type { Tree } from '../text/tree.ts'
import { isBorneOut, isGuessed, isWorse } from './agreement.ts'
import { isInOneVersion } from './open-conflicts.ts'
import { plain } from './sentences.ts'
import { sheetFacts } from './sheet-facts.ts'

/** Characters that are read again, at most, to try corrections: a record of 2 KB may have a hundred of them. */
const mostRead = 256 * 1024
/** And by the whole grammar of YAML, which a broken file is read by again and again. */
const mostEffort = 96 * 1024
/** How often a file is checked again, at most, to try those of rules. */
const mostChecked = 16
/** How often rules are asked, at most, what they say of a guess. */
const mostJudged = 48

/** A file as it is after a correction. */
interface Retried {
  readonly file: ReadFile
  /** Whether one rule may still find something there: quicker to answer than all that is found; true where that is not known. */
  readonly mayRemain: (rule: string) => boolean
  /** What the rules find in it, before it is folded and before acceptances. */
  readonly findings: () => readonly Found[]
  /** All that is found in it. */
  readonly found: () => readonly Found[]
}

/**
 * What was found, without the corrections that do not keep their promise: one that changes nothing or cannot be applied,
 * that puts no number where there is to be one, that leaves its own finding, breaks more of the file, changes one version of an open
 * conflict or drops a comment, or after which the record disagrees more than before, unless the sheet prints it so. A finding that
 * loses its best correction no longer speaks of it.
 */
export function withKeptPromises(
  typed: ReadFile,
  found: readonly Found[],
  retry: (text: string) => Retried,
): readonly Found[] {
  const { tree } = typed
  const ofReading = new Set(typed.readFindings().map(({ rule }) => rule))
  const tried = new Map<string, Retried | null>()
  let [readLeft, effortLeft, checksLeft, judgesLeft] = [mostRead, mostEffort, mostChecked, mostJudged]
  return found.map((one) => {
    if (one.fixes.length === 0) return one
    const fixes = one.fixes.filter((fix) => isKept(one, fix))
    if (fixes.length === one.fixes.length) return one
    return {
      ...one,
      fixes,
      ...(fixes[0] !== one.fixes[0] && !ofReading.has(one.rule.id) && { sentence: plain(one.claim) }),
    }
  })

  function isKept(one: Found, fix: Fix): boolean {
    const { edits, text } = fix
    if (isInOneVersion(tree, one, edits)) return false
    const after = applied(tree.text, edits)
    if (after === null || after === tree.text || (noNumber.test(text) && !noNumber.test(tree.text))) return false
    const again = tryOnce(after)
    return (
      again !== null &&
      again.file.tree.problems.length <= tree.problems.length &&
      (takesComment.has(one.rule.id) || keepsComments(one, again.file.tree)) &&
      isGone(one, again) &&
      !readsWorse(one, again.file) &&
      agrees(one, fix, again)
    )
  }

  function keepsComments({ rule }: Found, { comments }: Tree): boolean {
    if (comments.length >= tree.comments.length) return true
    // what was typed twice may have its comment twice
    const left = new Set(comments.map((comment) => comment.text))
    return rule.id === duplicateKey.id && tree.comments.every((comment) => left.has(comment.text))
  }

  /** Whether more is broken than before in the whole file, or something else in the field itself. */
  function readsWorse({ rule, pointer }: Found, after: ReadFile): boolean {
    if (!ofReading.has(rule.id)) return false
    const errors = (file: ReadFile) => file.readFindings().filter(({ severity }) => severity === 'error')
    const [now, before] = [errors(after), errors(typed)]
    const own = now.filter((one) => pointer !== '' && one.pointer === pointer)
    return (
      now.length > before.length ||
      own.some((one) => !before.some((old) => old.rule === one.rule && old.pointer === pointer))
    )
  }

  function agrees(one: Found, fix: Fix, after: Retried): boolean {
    // of a column that was typed from another model, one value alone is no better than none
    if (one.rule.id === sheetFacts.unlike.id) return true
    if (isGuessed(one, fix)) return isBorneOut(one, fix, typedAt(one.pointer), judgedWith)
    const before = ofReading.has(one.rule.id) ? null : tryOnce(tree.text)
    return !before || !isWorse(after.findings(), before.findings())
  }

  function judgedWith(edits: readonly Edit[]): readonly Found[] | null {
    const after = --judgesLeft < 0 ? null : applied(tree.text, edits)
    return after === null ? null : (tryOnce(after)?.findings() ?? null)
  }

  function typedAt(pointer: string): string {
    const node = nodeAtPointer(tree, pointer)
    return node?.kind === 'scalar' ? node.text : ''
  }

  function tryOnce(text: string): Retried | null {
    const known = tried.get(text)
    if (known !== undefined) return known
    readLeft -= text.length
    const again = readLeft < 0 || effortLeft < 0 ? null : retry(text)
    effortLeft -= again?.file.tree.effort ?? 0
    tried.set(text, again)
    return again
  }

  function isGone({ rule: { id }, pointer }: Found, { file, mayRemain, found: rest }: Retried): boolean {
    if (ofReading.has(id)) {
      const same = ({ readFindings }: ReadFile) =>
        readFindings().filter((other) => other.rule === id && other.pointer === pointer).length
      return same(file) < same(typed)
    }
    if (--checksLeft < 0) return false
    if (!mayRemain(id)) return true
    const same = (among: readonly Found[]) =>
      among.filter((other) => other.rule.id === id && other.pointer === pointer).length
    return same(rest()) < same(found)
  }
}

const noNumber = /\b(?:NaN|Infinity|undefined)\b/

/** What these find is that a text was taken for a comment. */
const takesComment: ReadonlySet<string> = new Set(['hash-cuts-text', 'hash-cuts-braces'])

/** null where the edits do not fit the text or each other. */
function applied(text: string, edits: readonly Edit[]): string | null {
  const sorted = [...edits].sort((a, b) => a.span.start - b.span.start)
  const fits = ({ span: { start, end } }: Edit, i: number) =>
    (sorted[i - 1]?.span.end ?? 0) <= start && start <= end && end <= text.length
  return sorted.every(fits) ? applyEdits(text, edits) : null
}
