import type { Found } from '../findings/found.ts'
import { nearest } from '../records/nearest.ts'
import type { ReadFile } from '../records/read-file.ts'
import { renameKey } from '../text/edits.ts'
import { nodeAtPointer } from '../text/tree-queries.ts'
import { noSuchRule, renamedRule } from './acceptance-facts.ts'
import { allFacts } from './facts.ts'
import { currentRuleId } from './former-rule-ids.ts'
import { phrase } from '../wording/phrase.ts'
import { whole } from './sentences.ts'

/** The ids of all rules. */
export const ruleNames: readonly string[] = allFacts.flatMap(({ rules }) => rules.map(({ id }) => id))

/** Severities that the settings of a library give to rules that do not exist, or that are called otherwise now. */
export function settingsFound({ tree }: ReadFile<'library'>): readonly Found[] {
  const node = nodeAtPointer(tree, '/severities')
  const entries = node?.kind === 'map' ? node.entries : []
  return entries
    .filter(({ key }) => !ruleNames.includes(key))
    .map(({ key, keySpan, pointer }) => {
      const place = { pointer, span: keySpan }
      const current = currentRuleId(key)
      if (current !== key) return renamedRule(key, current, place, renameKey(tree, pointer, current))
      const near = nearest(key, ruleNames)
      const edits = near ? [renameKey(tree, pointer, near)] : []
      const fix = near && {
        pointer,
        text: near,
        why: whole(phrase`the nearest rule`),
        certainty: 'guess' as const,
        edits,
      }
      return noSuchRule(key, near, place, fix ? [fix] : [])
    })
}
