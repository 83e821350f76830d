import { createHash } from 'node:crypto'
import { identitiesOf } from '../findings/identity.ts'
import type { FileReport } from './file-report.ts'

/**
 * A short name for each finding, by which other tools know it again.
 *
 * @returns  one for each finding, then one for each accepted one
 */
export function fingerprints(file: FileReport): readonly string[] {
  const { findings, accepted, base, text } = file
  if (file.fingerprints) return file.fingerprints
  const all = [...findings, ...accepted.map(({ finding }) => finding)]
  return identitiesOf(all, base, text).map((name) => createHash('sha256').update(name).digest('hex').slice(0, 16))
}
