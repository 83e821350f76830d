import { createHash } from 'node:crypto'
import type { Pack } from './pack.ts'

/** Of what a panel says, what decides which sheet and which others it is held against. */
export type Said = readonly [source: string | null, ...kinKeys: string[]]

/** What a panel says, by the name of its text; null where that is not kept. */
export function saidIn(pack: Pack, name: string): Said | null {
  const said = parsed<Said>(pack.get(name))
  return Array.isArray(said) ? said : null
}

export const kinKeysIn = (pack: Pack, name: string): readonly string[] | undefined =>
  saidIn(pack, name)?.slice(1) as string[] | undefined

/** 120 bits of a hash of anything that JSON can hold. */
export const nameOf = (what: unknown): string =>
  createHash('sha256')
    .update(JSON.stringify(what ?? null))
    .digest('base64url')
    .slice(0, 20)

/** null for a text that is not there, or was cut. */
export function parsed<T>(text: string | undefined): T | null {
  try {
    return text === undefined ? null : (JSON.parse(text) as T)
  } catch {
    return null
  }
}
