import type { Finding } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import { nearest } from '../records/nearest.ts'
import type { ReadFile } from '../records/read-file.ts'
import { renameKey } from '../text/edits.ts'
import { nodeAtPointer } from '../text/tree-queries.ts'
import { acceptanceFacts, noSuchRule, renamedRule } from './acceptances.ts'
import { allFacts } from './facts.ts'
import { currentRuleId } from './former-rule-ids.ts'

/** The ids of all rules. */
export const ruleNames: readonly string[] = allFacts.flatMap(({ rules }) => rules.map(({ id }) => id))

/** Severities that the settings of a library give to rules that do not exist, or that are called otherwise now. */
export function settingsFindings({ tree }: ReadFile<'library'>): readonly Finding[] {
  const node = nodeAtPointer(tree, '/severities')
  const entries = node?.kind === 'map' ? node.entries : []
  return entries
    .filter(({ key }) => !ruleNames.includes(key))
    .map(({ key, keySpan, pointer }) => {
      const current = currentRuleId(key)
      if (current !== key)
        return renamedRule(key, current, { pointer, span: keySpan }, renameKey(tree, pointer, current))
      const near = nearest(key, ruleNames)
      const edits = near ? [renameKey(tree, pointer, near)] : []
      return finding(acceptanceFacts.unknown, { pointer, span: keySpan }, noSuchRule(key, near), {
        corrections: near ? [{ pointer, text: near, why: 'the nearest rule', certainty: 'guess', edits }] : [],
      })
    })
}
