import { translated, type Bundle } from './bundle.ts'
import { sayIn } from './phrase.ts'

/** The page of a rule in another language, down to the findings in its examples. Records and the names of sources stay as they are. */
export function rulePageIn(page: string, bundle: Bundle | undefined): string {
  if (bundle === undefined) return page
  const parts = page.split(/(```[^]*?```)/)
  return parts
    .map((part, i) => (i % 2 === 1 ? example(part) : part.replace(/[^\n]+(?:\n[^\n]+)*/g, paragraph)))
    .join('')

  /** A finding stands below what it marks. */
  function example(text: string): string {
    return text.replace(/^( *# *\^+ )(.+)$/gm, (_, mark: string, words: string) => mark + translated(words, bundle))
  }

  function paragraph(text: string): string {
    const say = sayIn(bundle)
    const [, severity, reason] = /^Severity: (\w+)\. (.*)$/.exec(text) ?? []
    if (severity !== undefined && reason !== undefined)
      return say`Severity: ${translated(severity, bundle)}. ${translated(reason, bundle)}`
    const [, source] = /^Source: (.*)$/s.exec(text) ?? []
    if (source !== undefined) return say`Source: ${source}`
    const [, marks = '', words = ''] = /^(#+ )?(.*)$/s.exec(text) ?? []
    const line = words.replace(/\n/g, ' ')
    const other = translated(line, bundle)
    return other === line ? text : marks + other
  }
}
