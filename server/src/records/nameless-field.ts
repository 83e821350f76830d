import type { Finding } from '../findings/finding.ts'
import { finding, type Proposed } from '../findings/make.ts'
import { childPointer } from '../text/pointer.ts'
import { shortened } from '../text/shortened.ts'
import type { Entry, MapNode, Tree } from '../text/tree.ts'
import { phrase } from '../wording/phrase.ts'
import { reading } from './facts.ts'

/** `: 22.1 V`, `"": 22.1 V`: where one field of the group is missing, that is meant. */
export function namelessField(
  { entry: { pointer, keySpan, colon, value }, map }: { readonly entry: Entry; readonly map: MapNode },
  tree: Tree,
  missing: ReadonlySet<string>,
): { readonly finding: Finding; readonly meant: readonly string[] } {
  const keys = [...missing].flatMap((one) => {
    const key = one.slice(map.pointer.length + 1)
    return childPointer(map.pointer, key) === one ? [key] : []
  })
  const [only] = keys.length === 1 ? keys : []
  const at = colon ?? keySpan.start
  const isEmpty = keySpan.start === keySpan.end || tree.text.slice(keySpan.start, keySpan.end).trim() === ''
  const mean = only === undefined ? '' : phrase` Did you mean ${only}?`
  const typed = value?.kind === 'scalar' ? shortened(value.text) : phrase`what follows it`
  const sentence = phrase`A name is missing before the colon, so ${typed} is not read.${mean}`
  const edits = [{ span: isEmpty ? { start: at, end: at } : keySpan, text: only ?? '' }]
  const fix: Proposed = { pointer, text: only ?? '', why: phrase`the field that is missing`, certainty: 'guess', edits }
  const severity = only === undefined ? undefined : reading.missingField.severity
  return {
    finding: finding(reading.unknownField, { pointer, span: { start: at, end: at + 1 } }, sentence, {
      severity,
      corrections: only === undefined ? [] : [fix],
    }),
    meant: only === undefined ? [] : [childPointer(map.pointer, only)],
  }
}
