import type { ReadFile } from '../records/read-file.ts'
import type { Beside } from '../sheets/beside.ts'
import type { Held } from '../sheets/hold.ts'
import { pointers, type Evidence } from '../slips/evidence.ts'
import { findSlip } from '../slips/find-slip.ts'
import type { SlipVerdict } from '../slips/verdict.ts'
import type { Match } from './accept.ts'
import type { Relatives } from './family.ts'
import { heldOf } from './held.ts'

const none: SlipVerdict = { kind: 'consistent' }

/** The typing mistake that would explain a panel record, unless a person has accepted what a rule says of that field. */
export function slipIn(
  file: ReadFile<'panel'>,
  { evidence, family }: Relatives,
  accepted: readonly Match[],
  beside?: Beside,
): SlipVerdict {
  if (isUnreadable(file)) return none
  const seen = withWitnesses(evidence, heldOf(file, beside))
  // nothing is left that a hand could have mistyped; what the sheet itself contradicts is left to the rules
  if (Object.values(seen.readings).every((reading) => reading?.isPrinted)) return none
  const verdict = findSlip(seen, family)
  const vouched = ({ found }: Match) =>
    verdict.kind === 'slip' && found.severity !== 'hint' && found.pointer === verdict.pointer
  return accepted.some(vouched) ? none : withoutGuessAtThickness(file, verdict)
}

/** The thickness in the place of a side: what that side is stands nowhere, though many a number would agree. */
function withoutGuessAtThickness({ record: { size } }: ReadFile<'panel'>, verdict: SlipVerdict): SlipVerdict {
  const side = [size.length, size.width].find((one) => one && one.value === size.thickness?.value)
  if (!side || verdict.kind !== 'slip' || !verdict.pointer.startsWith('/size/')) return verdict
  return { kind: 'disagree', pointers: [side.pointer], siblings: [], odds: verdict.odds }
}

/** What the sheet prints as it was typed was typed as it is meant. */
function withWitnesses(evidence: Evidence, held: Held | null): Evidence {
  if (!held) return evidence
  const same = new Set(held.fields.filter(({ status }) => status === 'same').map(({ field }) => field.pointer))
  const readings = Object.entries(evidence.readings).map(
    ([pointer, reading]) => [pointer, { ...reading, isPrinted: same.has(pointer) }] as const,
  )
  return { ...evidence, readings: Object.fromEntries(readings) }
}

/**
 * A number that the search needs could not be read: that mistake is reported already, and without the number the rest of
 * the record says too little to find another.
 */
const isUnreadable = ({ readFindings }: ReadFile<'panel'>): boolean =>
  readFindings().some(
    ({ severity, pointer }) => severity === 'error' && (pointers as readonly string[]).includes(pointer),
  )
