import { anchorSign } from './anchor-sign.ts'
import { blockSign } from './block-sign.ts'
import { colonInText } from './colon-in-text.ts'
import { commaInText } from './comma-in-text.ts'
import { decimalComma } from './decimal-comma.ts'
import { duplicateKey } from './duplicate-key.ts'
import { hashInBraces, hashInText } from './hash.ts'
import type { HazardRule } from './hazard.ts'
import { mergeKey } from './merge-key.ts'
import { minusApart } from './minus-apart.ts'
import { missingColon } from './missing-colon.ts'
import { missingSpace } from './missing-space.ts'
import { notUtf8 } from './not-utf-8.ts'
import { quantityInBraces } from './braces.ts'
import { pastedCharacters } from './pasted-characters.ts'
import { tabIndent } from './tab-indent.ts'
import { textBehindQuote } from './text-behind-quote.ts'
import { twoReadings } from './two-readings.ts'

export { explains, type Hazard, type HazardRule, type Fix } from './hazard.ts'

/** Every way in which YAML damages what was typed; looked for before anything else is read. */
export const hazards: readonly HazardRule[] = [
  notUtf8,
  pastedCharacters,
  tabIndent,
  decimalComma,
  commaInText,
  hashInBraces,
  hashInText,
  minusApart,
  anchorSign,
  blockSign,
  colonInText,
  textBehindQuote,
  quantityInBraces,
  missingSpace,
  missingColon,
  duplicateKey,
  mergeKey,
  twoReadings,
]
