const quantityRef = /^quantities\.json#\/\$defs\/(.+)$/

/** JSON Schemas -> tables of FieldInfo, as data and as the TypeScript file that holds them. */
export function fieldTables(schemas) {
  const { quantities, ...kinds } = schemas
  const tables = Object.fromEntries(Object.entries(kinds).map(([kind, schema]) => [kind, info('', schema)]))
  const source = [
    '// Generated from schemas/source/ by `npm run generate`; do not edit.',
    "import type { FieldInfo, RecordKind } from './field-info.ts'",
    '',
    `export const schemas: Readonly<Partial<Record<RecordKind, FieldInfo>>> = ${JSON.stringify(tables, null, 1)}`,
    '',
  ].join('\n')
  return { tables, source }

  function info(key, schema, required = false) {
    const common = {
      key,
      title: schema.title,
      description: schema.description ?? '',
      ...(required && { required: true }),
      ...(schema.examples && { examples: schema.examples.map(typed) }),
      ...(schema.symbol && { symbol: schema.symbol }),
      ...(schema.costs && { costs: schema.costs }),
    }
    const quantity = quantityRef.exec(schema.$ref ?? '')?.[1]
    if (quantity) {
      const base = quantities.$defs[quantity]
      return {
        ...common,
        examples: (schema.examples ?? base.examples).map(typed),
        type: 'quantity',
        quantity,
        ...(schema.unit && { unit: schema.unit }),
      }
    }
    if (schema.record) return { ...common, type: 'reference', record: schema.record }
    if (schema.type === 'object' && schema.properties) {
      const must = new Set(schema.required ?? [])
      return {
        ...common,
        type: 'group',
        fields: Object.entries(schema.properties).map(([k, s]) => info(k, s, must.has(k))),
      }
    }
    if (schema.type === 'object') return { ...common, type: 'map', item: info('', schema.additionalProperties) }
    if (schema.type === 'array') return { ...common, type: 'list', item: info('', schema.items) }
    if (schema.enum) {
      const choices = schema.enum.map((value, i) => ({ value, description: schema.enumDescriptions?.[i] ?? '' }))
      return { ...common, type: 'choice', choices }
    }
    if (schema.format === 'date') return { ...common, type: 'date' }
    if (['integer', 'number', 'boolean'].includes(schema.type)) return { ...common, type: schema.type }
    return { ...common, type: 'text' }
  }
}

/** An example the way a person types it. */
const typed = (example) => (Array.isArray(example) ? `[${example.join(', ')}]` : String(example))
