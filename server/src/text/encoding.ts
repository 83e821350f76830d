/**
 * The encoding of a text that was read as UTF-8 and is not: null where nothing says so. Field names are ASCII, so every
 * second unit of UTF-16 is a zero, and three of four of UTF-32.
 */
export function foreignEncoding(text: string): string | null {
  if (!text.includes('\0')) return null
  const head = [...text.slice(0, 200)]
  const zeros = head.flatMap((sign, i) => (sign === '\0' ? [i] : []))
  if (zeros.length < 0.3 * head.length || zeros.length === 0) return null
  if (zeros.length > 0.6 * head.length) return 'UTF-32'
  return zeros.filter((i) => i % 2 === 0).length < zeros.length / 2 ? 'UTF-16' : 'UTF-16 (big-endian)'
}
