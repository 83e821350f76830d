import type { Catalogue, Param, Said } from '../findings/message.ts'
import { filled, inWords, templateFor, templateOf } from '../findings/words.ts'
import type { Bundle } from '../wording/bundle.ts'

/** How a claim goes on in the middle of a sentence. */
export const again = {
  id: 'again',
  messages: {
    /** Instead of the field that the sentence begins with, and its value. */
    it: 'it',
    /** Words that begin with a small letter there. */
    small: 'The All Charging Strings Panels',
  },
} as const

/** `Voc 2.21 V is probably 22.1 V: Voc 2.21 V is below …` names the field once, and goes on with a small letter. */
export function onceNamed(sentence: Said, by: Catalogue, bundle: Bundle | undefined): string {
  const { field, value, claim, why } = sentence.with ?? {}
  // only behind a reason in brackets does the claim go on with what the sentence begins with
  const goesOn = isSaid(claim) && value && why && !templateFor(sentence, by, bundle).startsWith('{claim}')
  if (!goesOn) return inWords(sentence, by, bundle)
  const subject = field ? [words(field, by, bundle), textOf(value) ?? ''] : null
  return inWords({ ...sentence, with: { ...sentence.with, claim: goneOn(claim, subject, by, bundle) } }, by, bundle)
}

/** @param subject  the field that the sentence begins with, by its name and as it was typed */
function goneOn(claim: Said, subject: readonly string[] | null, by: Catalogue, bundle: Bundle | undefined): string {
  const template = templateFor(claim, by, bundle)
  const said = (key: keyof typeof again.messages) => templateOf<string>(again.messages[key], `again/${key}`, bundle)
  const end = subject && endOfValue(template, claim, subject[1]!)
  const head = end && filled(template.slice(0, end), claim, by, bundle)
  // some claims name a field without its article
  if (end && [head, `The ${head}`].includes(subject.join(' ')))
    return `${said('it')}${filled(template.slice(end), claim, by, bundle)}`.trimStart()
  const [first = '', ...more] = template.split(' ')
  if (said('small').split(' ').includes(first))
    return filled([first.toLowerCase(), ...more].join(' '), claim, by, bundle)
  const [, name = ''] = /^\{(\w+)\}/.exec(template) ?? []
  const part = claim.with?.[name]
  if (!isSaid(part)) return filled(template, claim, by, bundle)
  const begun = goneOn(part, null, claim.of ?? by, bundle)
  return filled(template, { ...claim, with: { ...claim.with, [name]: begun } }, by, bundle)
}

/** Where the first placeholder for a value ends in a template; null where punctuation follows it. */
function endOfValue(template: string, { with: parts }: Said, value: string): number | null {
  for (const { 0: hole, 1: name, index } of template.matchAll(/\{(\w+)\}/g))
    if (textOf(parts?.[name!]) === value)
      return /^[ {]/.test(template.slice(index + hole.length)) ? index + hole.length : null
  return null
}

const isSaid = (part: Param): part is Said => typeof part === 'object' && part !== null && 'say' in part

const textOf = (part: Param): string | null =>
  typeof part === 'string' ? part : typeof part === 'object' && part !== null && 'text' in part ? part.text : null

const words = (field: Param, by: Catalogue, bundle: Bundle | undefined): string =>
  filled('{field}', { say: 'field', with: { field } }, by, bundle)
