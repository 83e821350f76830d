import { pasted } from './pasted.ts'
import type { ScalarNode, Tree } from './tree.ts'

type Style = ScalarNode['style']

/** How `text` must be typed so that it reads as `text` again; `style` is the quoting that stood there before. */
export function spelledScalar(text: string, style: Style, flow: boolean): string {
  if (style === 'double' || unprintable.test(text)) return JSON.stringify(text)
  if (style === 'single') return singleQuoted(text)
  if (!needsQuotes(text, flow)) return text
  return quotedScalar(text)
}

/** In quotes, needed or not; single ones where double ones would need backslashes. */
export function quotedScalar(text: string): string {
  if (unprintable.test(text)) return JSON.stringify(text)
  return /["\\]/.test(text) ? singleQuoted(text) : `"${text}"`
}

/** A JSON file needs JSON's spelling: quotes around all but numbers, and no comments. */
export function isJson({ root, text }: Tree): boolean {
  if (!root || root.kind === 'scalar' || !root.flow) return false
  return root.kind === 'list' || root.entries.every(({ keySpan }) => text[keySpan.start] === '"')
}

export function spelledForJson(text: string): string {
  return jsonNumber.test(text) ? text : JSON.stringify(text)
}

const jsonNumber = /^-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][-+]?\d+)?$/
const unprintable = /[\x00-\x08\x0a-\x1f\x7f-\x9f\u2028\u2029\ufeff\ud800-\udfff]/

function needsQuotes(text: string, flow: boolean): boolean {
  return (flow ? unsafeInFlow : unsafeInBlock).test(text) || pasted(text).length > 0
}

// Of YAML 1.2.2, section 7.3.3: what a plain scalar may not begin with, hold or end with.
const unsafe = String.raw`^$|^[\s,[\]{}#&*!|>'"%@${'`'}]|^[-?:](?:\s|$)|^(?:---|\.\.\.)(?:\s|$)|:(?:\s|$)|\s#|\s$|^<<$`
const unsafeInBlock = new RegExp(unsafe)
const unsafeInFlow = new RegExp(String.raw`${unsafe}|[,[\]{}]|^[-?:][,[\]{}]|:[,[\]{}]`)

function singleQuoted(text: string): string {
  return `'${text.replaceAll("'", "''")}'`
}
