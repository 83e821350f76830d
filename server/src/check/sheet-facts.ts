import type { Speaker } from '../findings/found.ts'

export const sheetFacts = {
  unlike: {
    id: 'unlike-sheet',
    severity: 'warning',
    reason: 'The record was typed from this sheet, and the row for this field prints another value.',
    source: 'the datasheet that the record names',
    messages: {
      unlike: '{field}: the sheet prints {text} (page {page})',
      labelled: '{field}: the sheet prints {text} (page {page}, "{label}")',
    },
  },
  unreadable: {
    id: 'sheet-unreadable',
    severity: 'hint',
    reason: 'A sheet without readable text vouches for nothing: the record is checked by arithmetic alone.',
    source: 'the datasheet that the record names',
    messages: {
      unreadable: '{source} cannot be read: {problem}',
    },
  },
  missing: {
    id: 'sheet-not-found',
    severity: 'hint',
    reason: 'With the sheet at hand every value of the record is compared with what is printed.',
    source: 'the datasheet that the record names',
    messages: {
      missing: '{source} is not there, so no value is compared with it',
    },
  },
  replaced: {
    id: 'sheet-replaced',
    severity: 'information',
    reason: 'A sheet of another revision may print other values than the one that was typed.',
    source: 'the datasheet that the record names',
    messages: {
      replaced: 'The sheet is not the one that this record was typed from',
    },
  },
  draft: {
    id: 'sheet-not-looked-at',
    severity: 'hint',
    reason: 'Values that a program read from a sheet are looked at by a person before anybody relies on them.',
    source: 'common practice, no source',
    messages: {
      draft: 'These values were read by a program; look at the sheet, then put your initials here',
    },
  },
} as const satisfies Record<string, Speaker>
