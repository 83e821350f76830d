import type { Finding } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import { isBeyond } from '../quantities/number.ts'
import { shortened } from '../text/shortened.ts'
import type { ScalarNode } from '../text/tree.ts'
import { phrase } from '../wording/phrase.ts'
import { reading } from './facts.ts'
import type { FieldInfo } from './field-info.ts'
import { fieldName } from './info-at.ts'

/** Reports a number beyond any that a record holds; null for all others. */
export function beyondAny(f: FieldInfo, node: ScalarNode, value: number): Finding | null {
  if (!isBeyond(value)) return null
  const message = phrase`${fieldName(f)} ${shortened(node.text)} is beyond any number of a record.`
  return finding(reading.outOfRange, node, message)
}
