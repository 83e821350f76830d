import type { RuleFacts } from '../findings/finding.ts'

const fact = (id: string, severity: RuleFacts['severity'], reason: string, source: string): RuleFacts => ({
  id,
  severity,
  reason,
  source,
})
const schema = 'the JSON Schema of the record'
const si = 'NIST Special Publication 811, Guide for the Use of the International System of Units'

/** The facts of every finding that reading a record can make. */
export const reading = {
  notRead: fact(
    'file-not-read',
    'error',
    'What is not read is not checked, and whatever refers to it is checked without it.',
    'the file system',
  ),
  internal: fact(
    'internal-error',
    'error',
    'The check of this file stopped at a mistake of the program, so it may not have found everything.',
    'the program itself',
  ),
  syntax: fact('yaml-syntax', 'error', 'A file that is not YAML can only be read in part.', 'YAML 1.2.2'),
  unknownField: fact(
    'unknown-field',
    'warning',
    'A field with an unknown name is not read by anything, so its value is lost without a word.',
    schema,
  ),
  otherWord: fact(
    'other-word',
    'information',
    'The word is understood here; other tools know only that of the schema.',
    schema,
  ),
  misplacedField: fact('misplaced-field', 'warning', 'A field at the wrong level is not read by anything.', schema),
  missingField: fact('missing-field', 'error', 'Without this field the record cannot be used.', schema),
  emptyField: fact(
    'empty-field',
    'information',
    'A field without a value says nothing; leave it out or fill it in.',
    schema,
  ),
  wrongKind: fact('wrong-kind', 'error', 'A value of another shape than expected cannot be read.', schema),
  notAChoice: fact('not-a-choice', 'error', 'Only these words are understood here.', schema),
  wrongText: fact('wrong-text', 'warning', 'The text cannot be read as what the field stands for.', schema),
  outOfRange: fact('out-of-range', 'error', 'The number is outside what the field can hold.', schema),
  wrongFormat: fact(
    'wrong-format',
    'error',
    'A record of another format may mean something else by the same words.',
    schema,
  ),
  noNumber: fact('quantity-unreadable', 'error', 'A quantity is a number and a unit, as printed on the sheet.', schema),
  notGiven: fact(
    'quantity-not-given',
    'warning',
    'A field that says "not available" is read as nothing; leaving it out says the same and cannot be mistaken.',
    schema,
  ),
  unknownUnit: fact('unknown-unit', 'error', 'A number without a known unit could mean anything.', si),
  wrongDimension: fact(
    'wrong-dimension',
    'error',
    'A unit of another dimension shows that another value was typed here.',
    si,
  ),
  missingUnit: fact('missing-unit', 'error', 'A number without a unit could mean anything.', si),
  twoNumbers: fact(
    'two-numbers',
    'error',
    'A field holds one value; a second would be dropped silently.',
    schema,
  ),
  ambiguousComma: fact(
    'ambiguous-comma',
    'error',
    'A comma before three digits is a decimal comma to some readers and a thousands separator to others.',
    'common practice, no source',
  ),
  misplacedSign: fact('misplaced-sign', 'error', 'A sign apart from its number is easily lost.', 'YAML 1.2.2'),
  decimalComma: fact(
    'decimal-comma',
    'information',
    'A comma in a number is understood here, but other tools stop at it.',
    'YAML 1.2.2, core schema',
  ),
  spelling: fact(
    'unusual-spelling',
    'hint',
    'A look-alike character reads well to the eye but not to other tools.',
    'Unicode Standard Annex 15, normalization forms',
  ),
} as const

/** Which facts a quantity reader's problem or note belongs to. */
export const quantityFacts = {
  'no-number': reading.noNumber,
  'not-given': reading.notGiven,
  'unknown-unit': reading.unknownUnit,
  'wrong-dimension': reading.wrongDimension,
  'missing-unit': reading.missingUnit,
  'two-numbers': reading.twoNumbers,
  'ambiguous-comma': reading.ambiguousComma,
  'misplaced-sign': reading.misplacedSign,
  'decimal-comma': reading.decimalComma,
  spelling: reading.spelling,
} as const
