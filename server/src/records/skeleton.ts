import { translated, type Bundle } from '../wording/bundle.ts'
import { sayIn } from '../wording/phrase.ts'
import type { FieldInfo } from './field-info.ts'

/** What is known of a field already: its text as YAML, and where it comes from. */
export interface Given {
  readonly text: string
  readonly note: string
}

/**
 * A record to be filled in: what is required stands open, everything else is commented out with an example, each line
 * with what the field means.
 *
 * @param given  values by JSON pointer that stand in it from the start
 */
export function skeleton(info: FieldInfo, given: ReadonlyMap<string, Given> = new Map(), bundle?: Bundle): string {
  const say = sayIn(bundle)
  return [
    `# ${translated(info.title, bundle)}. ${translated(info.description, bundle)}`,
    say`# Type numbers with their unit, as the sheet prints them. Uncomment the lines that the sheet gives.`,
    '',
    ...fieldsOf(info).flatMap((field) =>
      lines(field, { indent: '', isComment: !field.required, group: '', given, bundle }),
    ),
    '',
  ].join('\n')
}

/** Acceptances are left out: they answer findings, and a comment on the line does the same. */
const fieldsOf = (info: FieldInfo) => (info.fields ?? []).filter(({ key }) => key !== 'accepted')

interface Around {
  readonly indent: string
  readonly isComment: boolean
  /** JSON pointer of the group around it. */
  readonly group: string
  readonly given: ReadonlyMap<string, Given>
  readonly bundle: Bundle | undefined
}

function lines(field: FieldInfo, { indent, isComment, group, given, bundle }: Around): string[] {
  const start = `${field.key}:`
  const pointer = `${group}/${field.key}`
  const known = given.get(pointer)
  if (known) return [line(indent, `${start} ${known.text}`, known.note, false)]
  if (field.key === 'format' && indent === '') return ['format: 1']
  const isOpen = !isComment || [...given.keys()].some((one) => one.startsWith(`${pointer}/`))
  if (field.type === 'group')
    return [
      line(indent, start, translated(field.description, bundle), !isOpen),
      ...members(field, { indent: `${indent}  `, isComment, group: pointer, given, bundle }),
    ]
  if (field.type === 'list' && field.item)
    return [
      line(indent, start, translated(field.description, bundle), !isOpen),
      ...entries(field.item, { indent: `${indent}  `, isComment: true, group: pointer, given, bundle }),
    ]
  const value = isComment ? (example(field) ?? '') : ''
  return [line(indent, `${start} ${value}`.trimEnd(), about(field, value, bundle), isComment)]
}

const members = (group: FieldInfo, around: Around) =>
  fieldsOf(group).flatMap((field) => lines(field, { ...around, isComment: around.isComment || !field.required }))

/** The entries that are given; else one as a comment. */
function entries(item: FieldInfo, around: Around): string[] {
  const { indent, group, given, bundle } = around
  if (item.type !== 'group')
    return [line(indent, `- ${example(item) ?? ''}`.trimEnd(), about(item, example(item) ?? '', bundle), true)]
  const count = new Set(
    [...given.keys()]
      .filter((one) => one.startsWith(`${group}/`))
      .map((one) => one.slice(group.length + 1).split('/')[0]),
  ).size
  return Array.from({ length: Math.max(1, count) }, (_, i) => {
    const [first, ...others] = members(item, {
      ...around,
      indent: `${indent}  `,
      isComment: true,
      group: `${group}/${i}`,
    })
    return first === undefined ? [] : [asItem(first, indent), ...others]
  }).flat()
}

/** The first field of an item stands behind its dash. */
const asItem = (line: string, indent: string) =>
  line.startsWith(`${indent}  # `) ? line.replace('  # ', '# - ') : line.replace(`${indent}  `, `${indent}- `)

/** A comment as editors toggle it: without the `# ` behind its indent the line is the record's. */
function line(indent: string, code: string, note: string, isComment: boolean): string {
  return `${indent}${isComment ? '# ' : ''}${code}`.padEnd(32) + `  # ${note}`
}

function about(field: FieldInfo, value: string, bundle: Bundle | undefined): string {
  const choices = field.choices ? ` ${field.choices.map((choice) => choice.value).join(' | ')}` : ''
  const such = value === '' && example(field) && !field.choices ? sayIn(bundle)` Such as ${example(field)}` : ''
  return `${translated(field.description, bundle)}${choices}${such}`
}

const example = (field: FieldInfo) => field.examples?.[0] ?? field.choices?.[0]?.value
