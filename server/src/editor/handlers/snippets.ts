import type { FieldInfo } from '../../records/field-info.ts'

/** How a value is written around the place where it is typed. */
interface Style {
  readonly json: boolean
  readonly flow: boolean
}

/** What follows the colon of a field, with a stop where its value begins. */
export function valueSnippet(field: FieldInfo, { json, flow }: Style, stop = 1): string {
  switch (field.type) {
    case 'group':
    case 'map':
      return json || flow ? `{ $${stop} }` : ''
    case 'list':
      return field.item?.type === 'group' ? `[{ $${stop} }]` : `[$${stop}]`
    case 'choice':
      return quoted(`\${${stop}|${(field.choices ?? []).map(({ value }) => forChoice(value)).join(',')}|}`)
    case 'quantity':
      return quoted(`$${stop}${unitOf(field)}`)
    case 'integer':
    case 'number':
    case 'boolean':
      return field.key === 'format' ? '1' : `$${stop}`
    default:
      return quoted(`$${stop}`)
  }

  function quoted(text: string): string {
    return json ? `"${text}"` : text
  }
}

/** A line for each of the fields and of those that they must have themselves, with a stop in each that has a value. */
export function formSnippet(fields: readonly FieldInfo[]): readonly string[] {
  let stops = 0
  return linesOf(fields)

  function linesOf(list: readonly FieldInfo[]): string[] {
    return list.flatMap((field) => {
      const inside = requiredOf(field.item ?? field)
      if (inside.length > 0) {
        const lines = linesOf(inside)
        const lead = field.item ? ['  - ', '    '] : ['  ', '  ']
        return [`${field.key}:`, ...lines.map((line, i) => `${lead[i === 0 ? 0 : 1]}${line}`)]
      }
      const value = valueSnippet(field, { json: false, flow: true }, stops + 1)
      if (value.includes('$')) stops++
      return [`${field.key}: ${value}`]
    })
  }
}

const requiredOf = ({ fields }: FieldInfo) => (fields ?? []).filter(({ required }) => required)

export const isGroup = ({ type }: FieldInfo): boolean => type === 'group' || type === 'map'

/** The unit that a datasheet would print, behind the place of the number: a number that nobody read is never put in. */
function unitOf({ examples, unit }: FieldInfo): string {
  const [, printed] = /\d\s+([^\d\s]\S*)$/.exec(examples?.[0] ?? '') ?? []
  const text = printed ?? unit
  return text ? ` ${text.replace(/[\\$}]/g, '\\$&')}` : ''
}

const forChoice = (text: string) => text.replace(/[\\$},|]/g, '\\$&')
