export function wordsOf(manifest: unknown): string[]
export function withKeys(
  manifest: unknown,
  languages: Readonly<Record<string, Readonly<Record<string, string>>>>,
): { manifest: unknown; files: Record<string, Record<string, string>> }
