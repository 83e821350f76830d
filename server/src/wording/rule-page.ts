import { translated, type Bundle } from './bundle.ts'
import { sayIn } from './phrase.ts'

/** The page of a rule in another language. Examples, with the findings in them, and the names of sources stay in English. */
export function rulePageIn(page: string, bundle: Bundle | undefined): string {
  if (bundle === undefined) return page
  const parts = page.split(/(```[^]*?```)/)
  return parts.map((part, i) => (i % 2 === 1 ? part : part.replace(/[^\n]+(?:\n[^\n]+)*/g, paragraph))).join('')

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
