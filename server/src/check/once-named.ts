import { templateOf } from '../findings/words.ts'
import type { Bundle } from '../wording/bundle.ts'

/** What a sentence goes on with instead of naming the field again. */
export const again = { id: 'again', messages: { it: 'it' } } as const

/**
 * `Voc 2.21 V is probably 22.1 V: Voc 2.21 V is below …` names the field once.
 *
 * @param subject  the field and its value, in words
 */
export const onceNamed = (message: string, subject: string, bundle: Bundle | undefined): string =>
  bundle === undefined ? inEnglish(message) : inOtherLanguage(message, subject, bundle)

const inEnglish = (message: string): string =>
  message
    .replace(/^((?:The )?)(.+?)( (?:is probably|should be) .+?: )(?:The )?\2(?= )/, '$1$2$3it')
    .replace(
      /^(.+? (?:is probably|should be) .+?: )(The|All|Charging|Strings|Panels) /,
      (_, head: string, word: string) => `${head}${word.toLowerCase()} `,
    )

/** What stands after the reason in brackets begins with what the sentence began with. */
function inOtherLanguage(message: string, subject: string, bundle: Bundle): string {
  const at = message.indexOf('): ') + 3
  if (at < 3) return message
  const [head, claim] = [message.slice(0, at), message.slice(at)]
  if (subject === '' || !claim.startsWith(`${subject} `))
    return head + claim.replace(/^(?:El|La|Los|Las|Un|Una) /, (word) => word.toLowerCase())
  const it = templateOf(again.messages.it, 'again/it', bundle)
  return head + (it === '' ? claim.slice(subject.length + 1) : it + claim.slice(subject.length))
}
