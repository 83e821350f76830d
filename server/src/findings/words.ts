import type { Bundle } from '../wording/bundle.ts'
import { translated } from '../wording/bundle.ts'
import { phraseInWords } from '../wording/phrase.ts'
import type { Figure, Param, Catalogue, Said } from './message.ts'

/** A sentence or a part of one in words; parts of it that name no phrases are looked up in those of the whole. Throws where there is no such template or a number is none, which is a mistake of the rule. */
export function inWords(said: Said, by: Catalogue, bundle?: Bundle): string {
  return filled(templateFor(said, by, bundle), said, by, bundle)
}

/** What is said, as a template whose placeholders are still open. */
export function templateFor({ say, of }: Said, by: Catalogue, bundle?: Bundle): string {
  const { id, messages } = of ?? by
  const template = templateOf(messages[say], `${id}/${say}`, bundle)
  if (template === undefined) throw new Error(`${id} has no message ${say}`)
  return template
}

/** A template of what is said, or a part of one, in words. */
export const filled = (template: string, said: Said, by: Catalogue, bundle?: Bundle): string =>
  template.replace(/\{(\w+)\}/g, (_, name: string) => param(said.with?.[name], said.of ?? by, bundle))

/** Words of our own between those of a sentence. */
export const joining: Catalogue = { id: 'joining', messages: { and: 'and', or: 'or' } }

/** By its name where a bundle has that, otherwise by its English text. */
export const templateOf = <T extends string | undefined>(
  english: T,
  name: string,
  bundle: Bundle | undefined,
): string | T =>
  bundle === undefined || english === undefined ? english : (bundle[name] ?? translated(english, bundle))

function param(value: Param, by: Catalogue, bundle: Bundle | undefined): string {
  if (value === null || value === undefined) return ''
  if (typeof value === 'number') return number({ value })
  if (typeof value === 'string') return value
  if ('say' in value) return inWords(value, by, bundle)
  if ('template' in value) return phraseInWords(value, bundle)
  if ('list' in value) {
    const words = value.list.map((one) => param(one, by, bundle))
    if (!value.last || words.length < 2) return words.join(', ')
    return `${words.slice(0, -1).join(', ')} ${templateOf(joining.messages[value.last]!, `joining/${value.last}`, bundle)} ${words.at(-1)}`
  }
  return 'text' in value ? value.text : number(value)
}

function number({ value, unit, digits, decimals }: Figure): string {
  if (!Number.isFinite(value)) throw new RangeError(`${value} is said as a number`)
  const shown =
    digits !== undefined
      ? Number(value.toPrecision(digits))
      : decimals !== undefined
        ? Number(value.toFixed(decimals))
        : value
  return unit ? `${shown} ${unit}` : String(shown)
}
