import type { RuleFacts } from '../findings/finding.ts'

export const sheetFacts = {
  unlike: {
    id: 'unlike-sheet',
    severity: 'warning',
    reason: 'The record was typed from this sheet, and the row for this field prints another value.',
    source: 'the datasheet that the record names',
  },
  unreadable: {
    id: 'sheet-unreadable',
    severity: 'hint',
    reason: 'A sheet without readable text vouches for nothing: the record is checked by arithmetic alone.',
    source: 'the datasheet that the record names',
  },
  missing: {
    id: 'sheet-not-found',
    severity: 'hint',
    reason: 'With the sheet at hand every value of the record is held against what is printed.',
    source: 'the datasheet that the record names',
  },
  replaced: {
    id: 'sheet-replaced',
    severity: 'information',
    reason: 'A sheet of another revision may print other values than the one that was typed.',
    source: 'the datasheet that the record names',
  },
  draft: {
    id: 'sheet-not-looked-at',
    severity: 'hint',
    reason: 'Values that a program read from a sheet are looked at by a person before anybody relies on them.',
    source: 'common practice, no source',
  },
} as const satisfies Record<string, RuleFacts>
