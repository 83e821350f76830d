import type { ReadFile } from '../records/read-file.ts'
import { acceptComments } from '../text/accept-comments.ts'
import { replaceNode } from '../text/edits.ts'
import type { Edit, Span } from '../text/span.ts'
import { nodeAtPointer } from '../text/tree-queries.ts'
import type { Node, ScalarNode } from '../text/tree.ts'
import { currentRuleId } from './former-rule-ids.ts'

/** What a person lets stand, and why. */
export interface Acceptance {
  readonly rule: string
  /** The rule's id as it was typed, and the edit that puts the current one in its place. */
  readonly typed: string
  readonly update: Edit
  readonly because: string
  readonly span: Span
  /** The fields it holds for; null for the whole file. */
  readonly pointers: readonly string[] | null
}

/** All acceptances of a file, in comments and in its list. */
export const acceptancesIn = (file: ReadFile): readonly Acceptance[] => [...fromComments(file), ...fromList(file)]

const fromComments = ({ tree }: ReadFile): Acceptance[] =>
  acceptComments(tree).map((c) => {
    const rule = currentRuleId(c.rule)
    const update = { span: c.ruleSpan, text: rule }
    return { ...c, rule, typed: c.rule, update, pointers: c.pointers.length > 0 ? c.pointers : null }
  })

function fromList({ tree }: ReadFile): Acceptance[] {
  const list = nodeAtPointer(tree, '/accepted')
  if (list?.kind !== 'list') return []
  return list.items.flatMap((item) => {
    const named = scalar(item, 'rule')
    if (item === null || named === null) return []
    const typed = named.text.trim()
    const rule = currentRuleId(typed)
    return [
      {
        rule,
        typed,
        update: replaceNode(tree, named, rule),
        because: scalar(item, 'because')?.text.trim() ?? '',
        span: item.span,
        pointers: [scalar(item, 'field')?.text.trim() ?? ''],
      },
    ]
  })
}

function scalar(node: Node | null, key: string): ScalarNode | null {
  const value = node?.kind === 'map' ? node.entries.find((e) => e.key === key)?.value : null
  return value?.kind === 'scalar' ? value : null
}
