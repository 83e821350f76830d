import type { Speaker } from '../findings/found.ts'
import type { Catalogue } from '../findings/message.ts'

const claim = '{field} {value} disagrees with the rest of the record'

export const slipFacts = {
  slip: {
    id: 'likely-slip',
    severity: 'warning',
    reason: 'A datasheet says the same thing several times over; one mistyped value makes it contradict itself.',
    source: 'likelihood under relations calibrated on open module ratings of a public list, 2015 to 2022',
    messages: { slip: claim },
  },
  disagree: {
    id: 'ratings-disagree',
    severity: 'warning',
    reason: 'These values cannot all be right, and no single typing mistake stands out that would explain them.',
    source: 'likelihood under relations calibrated on open module ratings of a public list, 2015 to 2022',
    messages: { disagree: claim },
  },
} as const satisfies Record<string, Speaker>

/** What a sentence about a slip begins with, by the JSON pointer of the field. */
export const slipFields: Catalogue = {
  id: 'slip-fields',
  messages: {
    '/stc/pmax': 'Pmax',
    '/stc/vmp': 'Vmp',
    '/stc/imp': 'Imp',
    '/stc/voc': 'Voc',
    '/stc/isc': 'Isc',
    '/stc/efficiency': 'The printed efficiency',
    '/size/length': 'The length',
    '/size/width': 'The width',
    '/temperature_coefficients/pmax': 'The Pmax coefficient',
    '/temperature_coefficients/voc': 'The Voc coefficient',
    '/temperature_coefficients/isc': 'The Isc coefficient',
    '/noct/temperature': 'NOCT',
    '/noct/pmax': 'Pmax at NOCT',
    '/noct/vmp': 'Vmp at NOCT',
    '/noct/imp': 'Imp at NOCT',
    '/cells/in_series': 'The cell count',
  },
}

/** The same in the middle of a sentence. */
export const laterFields: Catalogue = {
  id: 'later-slip-fields',
  messages: Object.fromEntries(
    Object.entries(slipFields.messages).map(([pointer, name]) => [pointer, name.replace(/^The /, 'the ')]),
  ),
}
