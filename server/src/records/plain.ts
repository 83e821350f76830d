import type { ScalarNode } from '../text/tree.ts'

const plainNumber = /^[-+]?(?:\d+\.?\d*|\.\d+)$/

/** A number or a word as YAML 1.2 means it; quantities stay text. */
export function scalarValue({ text, style }: ScalarNode): string | number | boolean {
  if (style !== 'plain') return text
  if (plainNumber.test(text)) return Number(text)
  if (text === 'true' || text === 'false') return text === 'true'
  return text
}
