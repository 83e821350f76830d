import { phrase } from '../wording/phrase.ts'
import { beginsAsNumber } from './hazards/hazard.ts'
import { reading, withoutComment, type Line, type Surroundings } from './line.ts'
import { shortened } from './shortened.ts'
import type { OtherReading } from './tree.ts'

/**
 * `size { length: 1190 mm }`, `size = { … }`, `- id bimini`, `name -> Tern 110`: a field whose colon is missing, or is another
 * sign, before a group, of an item, or before a text of several words. Before one word or number YAML's own tree shows it.
 */
export function ownColon({ start, text, column, indent }: Line, { names }: Surroundings): readonly OtherReading[] {
  const [, name = '', joint = '', value = ''] =
    /^([A-Za-z_][\w-]*)( *(?:->|=>|\u2192|[=;.,]) *| +- ?| +|:)(\S.*)$/.exec(withoutComment(text).slice(column)) ?? []
  if (!names.has(name) || (joint === ':' && ((column === indent && !value.startsWith('#')) || value.startsWith('/'))))
    return []
  const isGroup = /^[{[]/.test(value)
  const isArrow = /[>\u2192-]/.test(joint)
  if (joint !== ':' && !isGroup && !isArrow && column === indent && (beginsAsNumber(value) || !/\s/.test(value)))
    return []
  if (!isGroup && /: /.test(value)) return []
  const at = start + column + name.length
  const edits = [{ span: { start: at, end: at + joint.length }, text: ': ' }]
  const sentence =
    joint === ':'
      ? phrase`A space is missing after the colon: write ${name}: ${shortened(value)}.`
      : phrase`The colon after ${name} is missing: write ${name}: ${shortened(value)}.`
  const fixed = `${name}: ${value}`
  const why = phrase`a colon after the name`
  return [{ ...reading('no-colon', edits, [start + column, name.length], sentence, why, fixed), mustFit: true }]
}

/** `{ name fridge, power: 45 W }` */
export function colonsWithin({ start, text }: Line, { names }: Surroundings): readonly OtherReading[] {
  const typed = withoutComment(text)
  return [...typed.matchAll(/(?<=[{,] ?)([A-Za-z_][\w-]*)( *(?:->|[-=]) *| +)([\w[][^:,{}[\]]*)/g)].flatMap(
    ({ index, 1: name = '', 2: joint = '', 3: value = '' }) => {
      if (!names.has(name) || beginsAsNumber(value)) return []
      const at = start + index + name.length
      const edits = [{ span: { start: at, end: at + joint.length }, text: ': ' }]
      const sentence = phrase`The colon after ${name} is missing: write ${name}: ${shortened(value.trim())}.`
      const why = phrase`a colon after the name`
      const fixed = `${name}: ${value}`
      return [{ ...reading('no-colon', edits, [start + index, name.length], sentence, why, fixed), mustFit: true }]
    },
  )
}
