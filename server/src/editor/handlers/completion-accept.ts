import type { CompletionItem } from 'vscode-languageserver'
import { CompletionItemKind } from '../lsp.ts'
import { allFacts } from '../../check/facts.ts'
import { rank, severities } from '../../findings/severities.ts'
import { lineAround } from '../../text/lines.ts'
import type { Here } from '../here.ts'
import { toRange } from '../to-protocol.ts'

/** In a comment: the rules that can be accepted, first those that found something on this line, the gravest before others. */
export function acceptItems({ checked: { tree, findings } }: Here, offset: number): CompletionItem[] {
  const comment = tree.comments.find(({ span }) => span.start < offset && offset <= span.end + 1)
  const before = comment ? tree.text.slice(comment.span.start, offset) : ''
  const last = before.slice(before.lastIndexOf(';') + 1)
  const [, word, rule] = /^(?:#+\s*|\s+)((?:accept\s+)?([\w-]*))$/.exec(last) ?? []
  if (word === undefined || rule === undefined) return []
  const line = lineAround(tree.text, offset)
  const onLine = findings.filter(({ span }) => line.start <= span.start && span.start <= line.end)
  const here = new Map(onLine.map(({ rule, severity }) => [rule, rank(severity)]))
  const start = word.startsWith('accept') ? offset - rule.length : offset - word.length
  const lead = start === offset - word.length && !word.startsWith('accept ') ? 'accept ' : ''
  const range = toRange(tree, { start, end: offset })
  return allFacts.flatMap(({ rules }) =>
    rules.map(({ id, reason }) => ({
      label: `${lead}${id}`,
      kind: CompletionItemKind.EnumMember,
      documentation: reason,
      sortText: `${here.get(id) ?? severities.length}${id}`,
      filterText: `${lead}${id}`,
      textEdit: { range, newText: `${lead}${id}: ` },
    })),
  )
}
