import { readFileSync, readdirSync } from 'node:fs'
import { expect, test } from 'vitest'
import { reported } from './reported.ts'

/** What a reader of messages must never see. */
const machine =
  /\^\[|\$ref|additionalProperties|instancePath|must (?:be|have|match)|\[object|undefined|NaN|null\b|pattern\b|\\d/

test('whatever a schema can complain of has a sentence', () => {
  const said = new Set([
    'additionalProperties',
    'required',
    'enum',
    'const',
    'type',
    'pattern',
    'minimum',
    'maximum',
    'minItems',
    'maxItems',
  ])
  const other = new Set([
    '$schema',
    '$id',
    '$ref',
    '$defs',
    'title',
    'description',
    'properties',
    'items',
    'format',
    'examples',
  ])
  const ours = new Set(['unit', 'symbol', 'costs', 'enumDescriptions', 'patternErrorMessage', 'record'])
  const words = (schema: unknown): string[] => {
    if (typeof schema !== 'object' || schema === null || Array.isArray(schema)) return []
    return Object.entries(schema).flatMap(([word, value]) => {
      const inner = word === 'properties' || word === '$defs' ? Object.values(value as object) : [value]
      return [word, ...inner.flatMap(words)]
    })
  }
  const names = readdirSync('schemas/source')
  const used = new Set(names.flatMap((name) => words(JSON.parse(readFileSync(`schemas/source/${name}`, 'utf8')))))
  expect([...used].filter((word) => !said.has(word) && !other.has(word) && !ours.has(word))).toEqual([])
})

test('no message speaks the language of the validator', () => {
  const values = ['', '[]', '{}', '[[1], {a: b}]', 'x', '-1', '1e9', 'true', '"', '{', '&a', '*b', '~', '2026-13-45']
  const keys = [
    'format',
    'name',
    'construction',
    'cells',
    'bifacial',
    'stc',
    'size',
    'weight',
    'price',
    'warranty',
    'certificates',
    'datasheet',
    'accepted',
    'limits',
    'notes',
  ]
  for (const key of keys)
    for (const value of values)
      for (const line of reported(`${key}: ${value}\n`)
        .map((one) => one.replace(/^[^\]]*\] /, ''))
        .filter((one) => !/"null"/.test(one)))
        expect(line, `${key}: ${value}`).not.toMatch(machine)
})
