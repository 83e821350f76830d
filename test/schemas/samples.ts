import { readdirSync } from 'node:fs'
import { basename, join } from 'node:path'

export const kinds = ['panel', 'controller', 'battery', 'climate', 'system', 'library'] as const

/** Every record of the samples that holds no planted mistake, with its kind. */
export const samples = readdirSync('samples', { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.(yaml|json)$/.test(path) && !path.startsWith('mistakes'))
  .map((path) => ({ path: join('samples', path), kind: kindOf(path) }))

function kindOf(path: string): string {
  return basename(path) === 'wattproof.yaml' ? 'library' : (basename(path).split('.').at(-2) ?? '')
}
