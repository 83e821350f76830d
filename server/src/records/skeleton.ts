import type { FieldInfo } from './field-info.ts'

/**
 * A record to be filled in: what is required stands open, everything else is commented out with an example, each line
 * with what the field means.
 */
export function skeleton(info: FieldInfo): string {
  return [
    `# ${info.title}. ${info.description}`,
    '# Type numbers with their unit, as the sheet prints them. Take the # away from the lines that the sheet gives.',
    '',
    ...fieldsOf(info).flatMap((field) => lines(field, '', !field.required)),
    '',
  ].join('\n')
}

/** Acceptances are left out: they answer findings, and a comment on the line does the same. */
const fieldsOf = (info: FieldInfo) => (info.fields ?? []).filter(({ key }) => key !== 'accepted')

function lines(field: FieldInfo, indent: string, isComment: boolean): string[] {
  const start = `${indent}${field.key}:`
  if (field.key === 'format' && indent === '') return ['format: 1']
  if (field.type === 'group')
    return [line(start, field.description, isComment), ...members(field, `${indent}  `, isComment)]
  if (field.type === 'list' && field.item)
    return [line(start, field.description, isComment), ...entries(field.item, `${indent}  `)]
  const value = isComment ? (example(field) ?? '') : ''
  return [line(`${start} ${value}`.trimEnd(), about(field, value), isComment)]
}

const members = (group: FieldInfo, indent: string, isComment: boolean) =>
  fieldsOf(group).flatMap((field) => lines(field, indent, isComment || !field.required))

/** One entry of a list, always as a comment. */
function entries(item: FieldInfo, indent: string): string[] {
  if (item.type !== 'group')
    return [line(`${indent}- ${example(item) ?? ''}`.trimEnd(), about(item, example(item) ?? ''), true)]
  const [first, ...others] = members(item, `${indent}  `, true)
  return first === undefined ? [] : [first.replace(`${indent}  `, `${indent}- `), ...others]
}

/** `#` takes the place of nothing: without it the line is the record's. */
function line(code: string, note: string, isComment: boolean): string {
  return `${isComment ? '#' : ''}${code}`.padEnd(32) + `  # ${note}`
}

function about(field: FieldInfo, value: string): string {
  const choices = field.choices ? ` ${field.choices.map((choice) => choice.value).join(' | ')}` : ''
  const such = value === '' && example(field) && !field.choices ? ` Such as ${example(field)}` : ''
  return `${field.description}${choices}${such}`
}

const example = (field: FieldInfo) => field.examples?.[0] ?? field.choices?.[0]?.value
