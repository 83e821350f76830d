/** Tables of FieldInfo -> the TypeScript types of records as they are read. */
export function recordTypes(tables) {
  const name = (kind) => (kind === 'library' ? 'Settings' : kind[0].toUpperCase() + kind.slice(1))
  const out = [
    '// Generated from schemas/source/ by `npm run generate`; do not edit.',
    "import type { Field, Measure } from './field.ts'",
    '',
    '/** Another record, by its id or with its fields in place. */',
    'export interface Reference<T> {',
    '  readonly id?: Field<string>',
    '  readonly inline?: T',
    '}',
  ]
  for (const [kind, table] of Object.entries(tables))
    out.push(
      '',
      `/** ${table.title}: ${table.description} Groups and lists are always there, if empty. */`,
      `export interface ${name(kind)} ${group(table, '')}`,
    )
  const kinds = ['panel', 'controller', 'battery', 'climate', 'system', 'library']
  out.push(
    '',
    '/** The record of each kind. */',
    'export interface RecordTypes {',
    ...kinds.map((k) => `  readonly ${k}: ${tables[k] ? name(k) : 'unknown'}`),
    '}',
  )
  return out.join('\n') + '\n'

  function group(info, indent) {
    const lines = info.fields.map(
      (f) => `${indent}  readonly ${f.key}${always(f) ? '' : '?'}: ${type(f, indent + '  ')}`,
    )
    return `{\n${lines.join('\n')}\n${indent}}`
  }
  function type(f, indent) {
    if (f.type === 'group') return group(f, indent)
    if (f.type === 'list') return `readonly ${f.item.type === 'group' ? group(f.item, indent) : type(f.item, indent)}[]`
    if (f.type === 'map') return `Readonly<Record<string, ${type(f.item, indent)}>>`
    if (f.type === 'reference') return tables[f.record] ? `Reference<${name(f.record)}>` : 'Reference<never>'
    if (f.type === 'quantity') return 'Measure'
    if (f.type === 'choice') return `Field<${f.choices.map((c) => `'${c.value}'`).join(' | ')}>`
    if (f.type === 'boolean') return 'Field<boolean>'
    return f.type === 'integer' || f.type === 'number' ? 'Field' : 'Field<string>'
  }
}
const always = (f) => ['group', 'list', 'map', 'reference'].includes(f.type)
