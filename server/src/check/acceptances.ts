import type { Finding, RuleFacts } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import { nearest } from '../records/nearest.ts'
import type { ReadFile } from '../records/read-file.ts'
import { acceptComments } from '../text/accept-comments.ts'
import { replaceNode } from '../text/edits.ts'
import type { Edit, Span } from '../text/span.ts'
import { nodeAtPointer } from '../text/tree-queries.ts'
import type { Node, ScalarNode } from '../text/tree.ts'
import type { Accepted } from './checked.ts'
import { currentRuleId } from './former-rule-ids.ts'

export const acceptanceFacts = {
  unreasoned: {
    id: 'acceptance-without-reason',
    severity: 'warning',
    reason: 'The next reader must know why a finding was let stand, or it will be looked at again.',
    source: 'common practice, no source',
  },
  unknown: {
    id: 'unknown-rule',
    severity: 'warning',
    reason: 'A name that no rule has changes nothing, and what it was meant for goes on or stays silent unseen.',
    source: 'the rules of this program',
  },
  unused: {
    id: 'acceptance-unused',
    severity: 'information',
    reason: 'An acceptance that no longer matches anything hides the next mistake on its line.',
    source: 'common practice, no source',
  },
  renamed: {
    id: 'rule-renamed',
    severity: 'hint',
    reason: 'The old id still works, but the reference and the messages use the new one.',
    source: 'the rules of this program',
  },
} as const satisfies Record<string, RuleFacts>

interface Acceptance {
  readonly rule: string
  /** The rule's id as it was typed, and the edit that puts the current one in its place. */
  readonly typed: string
  readonly update: Edit
  readonly because: string
  readonly span: Span
  /** The fields it holds for; null for the whole file. */
  readonly pointers: readonly string[] | null
}

/**
 * Takes accepted findings out, and says which acceptances lack a reason, name no rule or match nothing.
 *
 * @param rules  the ids of all rules
 */
export function settle(
  file: ReadFile,
  found: readonly Finding[],
  rules: readonly string[],
): { readonly findings: readonly Finding[]; readonly accepted: readonly Accepted[] } {
  const acceptances = [...fromComments(file), ...fromList(file)]
  if (acceptances.length === 0) return { findings: found, accepted: [] }
  const used = new Set<Acceptance>()
  const findings: Finding[] = []
  const accepted: Accepted[] = []
  for (const one of found) {
    const match = acceptances.find((a) => covers(a, one))
    if (match) {
      used.add(match)
      accepted.push({ finding: one, because: match.because })
    } else findings.push(one)
  }
  const idle = acceptances.filter((a) => !used.has(a))
  const renamed = [...used].filter(({ rule, typed }) => rule !== typed)
  return {
    findings: [...findings, ...idle.map((a) => complaint(a, rules)), ...renamed.map(newName)],
    accepted,
  }
}

/** Whether a person has let this finding stand. */
export function isAccepted(file: ReadFile): (finding: Finding) => boolean {
  const acceptances = [...fromComments(file), ...fromList(file)]
  return (one) => acceptances.some((a) => covers(a, one))
}

/** `No rule is called efficiency-print. Did you mean efficiency-printed?` */
export function noSuchRule(name: string, near: string | null): string {
  return `No rule is called ${name}.${near ? ` Did you mean ${near}?` : ''}`
}

function complaint({ rule, because, span, pointers }: Acceptance, rules: readonly string[]): Finding {
  const place = { pointer: pointers?.[0] ?? '', span }
  if (!rules.includes(rule)) return finding(acceptanceFacts.unknown, place, noSuchRule(rule, nearest(rule, rules)))
  if (because === '') {
    const message = `${rule} is accepted without a reason; write \`accept ${rule}: why\`.`
    return finding(acceptanceFacts.unreasoned, place, message)
  }
  return finding(acceptanceFacts.unused, place, `Nothing here is found by ${rule}, so this acceptance can go.`)
}

const newName = ({ rule, typed, update, pointers }: Acceptance): Finding =>
  renamedRule(typed, rule, { pointer: pointers?.[0] ?? '', span: update.span }, update)

/** `voc-per-cell is now called voc-per-cell-unusual.` */
export function renamedRule(
  old: string,
  current: string,
  place: { readonly pointer: string; readonly span: Span },
  edit: Edit,
): Finding {
  const { pointer } = place
  const correction = { pointer, text: current, why: 'the new id', certainty: 'same', edits: [edit] } as const
  return finding(acceptanceFacts.renamed, place, `${old} is now called ${current}.`, { corrections: [correction] })
}

const covers = ({ rule, because, pointers }: Acceptance, { rule: found, pointer }: Finding) =>
  because !== '' &&
  rule === found &&
  (pointers === null || pointers.some((p) => pointer === p || pointer.startsWith(`${p}/`)))

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
