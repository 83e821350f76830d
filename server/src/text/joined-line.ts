import { phrase } from '../wording/phrase.ts'
import { reading, type Line, type Surroundings } from './line.ts'
import { shortened } from './shortened.ts'
import type { OtherReading } from './tree.ts'

/** A value that goes on in the next line, or begins there: `voc: 22.1` and `V`. */
export function joinedLine({ start, text }: Line, { next }: Surroundings): readonly OtherReading[] {
  const [, typed] = /^ *(?:- +)*[A-Za-z_][\w-]*:(?: (.*))?$/.exec(text) ?? []
  const value = typed?.trim() || undefined
  const words = next?.text.trim() ?? ''
  if (!next || !/^ *(?:- +)*[A-Za-z_][\w-]*:/.test(text) || / #/.test(text) || !isRest(value, words)) return []
  const end = start + text.trimEnd().length
  const edits = [{ span: { start: end, end: next.start + next.indent }, text: ' ' }]
  const sentence = phrase`${shortened(words)} belongs to the value of the line above.`
  const place = [next.start + next.indent, words.length] as const
  return [
    {
      ...reading('joined', edits, place, sentence, phrase`in the line above`, value ? `${value} ${words}` : words),
      mustFit: true,
    },
  ]
}

function isRest(value: string | undefined, words: string): boolean {
  if (!/^[^\s#{}[\]"'&*!|>-]/.test(words) || /:(?:\s|$)| #/.test(words)) return false
  if (value === undefined) return /^[-+]?[.\d]/.test(words)
  if (/^[{["'|>]/.test(value)) return false
  return /^[-+.\d\s]+$/.test(value) ? /^[^\s\d]{1,8}$/.test(words) : /[,;]$/.test(value) && /\s/.test(value)
}
