import { formatIn } from '../quantities/format.ts'
import { readQuantity } from '../quantities/read.ts'
import { bankOf } from './bank.ts'
import type { ResolvedSystem } from './resolved.ts'

/** What a text that is a current takes from the bank: `5 A` is 64 W at 12.8 V; null where it is none, or the bank is not known. */
export function amperesInWatts(
  typed: string,
  system: ResolvedSystem,
): { readonly power: string; readonly voltage: string } | null {
  const current = readQuantity(typed, 'current').quantity?.value
  const voltage = bankOf(system)?.voltage
  if (current === undefined || voltage === undefined) return null
  return { power: formatIn(current * voltage, 'W', 3), voltage: formatIn(voltage, 'V', 3) }
}
