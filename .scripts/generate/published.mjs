/**
 * The schema of one kind of record as other tools use it: JSON Schema 2020-12 in one file, without a keyword or a format
 * of our own. A quantity is a number or text of its pattern; units and choices are named in the description, where
 * any editor shows them.
 */
export function publishedSchema(kind, schemas) {
  const inline = new Set()
  const schema = published(schemas[kind])
  const $defs = {}
  for (const name of inline) $defs[name] = partOfAnother(published(schemas[name]))
  return (
    JSON.stringify(
      {
        $schema: schema.$schema,
        $id: `https://wattproof.example/schemas/${kind}.schema.json`,
        $comment: `Generated from schemas/source/${kind}.json; do not edit.`,
        ...without(schema, ['$schema', '$id']),
        ...(inline.size && { $defs }),
      },
      null,
      2,
    ) + '\n'
  )

  function published(source) {
    if (source.$ref) return quantity(source)
    if (source.record) {
      inline.add(source.record)
      return { ...described(source), oneOf: [{ type: 'string' }, { $ref: `#/$defs/${source.record}` }] }
    }
    const { properties, items, additionalProperties, type, ...rest } = without(source, notPublished)
    return {
      ...rest,
      ...described(source),
      ...(Array.isArray(type) ? { oneOf: type.map((one) => ({ type: one })) } : { type }),
      ...(properties && { properties: mapValues(properties, published) }),
      ...(items && { items: published(items) }),
      ...(additionalProperties !== undefined && {
        additionalProperties: typeof additionalProperties === 'object' ? published(additionalProperties) : false,
      }),
    }
  }

  function quantity(source) {
    const { title, examples, pattern } = schemas.quantities.$defs[source.$ref.split('/').at(-1)]
    return { ...described({ title, examples, ...source }), oneOf: [{ type: 'string', pattern }, { type: 'number' }] }
  }
}

const notPublished = ['unit', 'symbol', 'costs', 'enumDescriptions', 'patternErrorMessage', 'record', 'format']

/** What a person reads of a field. */
function described({ title, description = '', unit, enum: choices, enumDescriptions, examples }) {
  const sentences = [
    description,
    enumDescriptions && `One of ${choices.map((choice, i) => `${choice} (${enumDescriptions[i]})`).join(', ')}.`,
    unit && `A bare number is in ${unit}.`,
  ]
  return { title, description: sentences.filter(Boolean).join(' '), ...(examples && { examples }) }
}

/** A record that stands inside another file needs neither a format nor a name. */
function partOfAnother({ required, ...schema }) {
  return { ...without(schema, ['$schema', '$id']), required: required.filter((f) => f !== 'format' && f !== 'name') }
}

const without = (object, keys) => Object.fromEntries(Object.entries(object).filter(([key]) => !keys.includes(key)))
const mapValues = (object, f) => Object.fromEntries(Object.entries(object).map(([k, v]) => [k, f(v)]))
