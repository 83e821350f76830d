import { readFileSync, readdirSync } from 'node:fs'
import { expect, test } from 'vitest'
import { parse } from 'yaml'
import type { FieldInfo } from '../../server/src/records/field-info.ts'
import { schemas } from '../../server/src/records/schemas.generated.ts'
import { checkFolder, isSerious } from './checked.ts'

const folder = 'samples/library/panels'
const names = readdirSync(folder)
const found = checkFolder('samples/library')
const records = names.map((name) => parse(readFileSync(`${folder}/${name}`, 'utf8')))

test.each([...found.keys()])('%s has no error, no warning and no hint', (path) => {
  const findings = found.get(path) ?? []
  expect(findings.filter((finding) => isSerious(finding) || finding.severity === 'hint')).toEqual([])
})

test('the library shows every construction, a range of technologies, and US sheets', () => {
  expect(names.length).toBeGreaterThanOrEqual(12)
  expect(new Set(records.map((record) => record.construction))).toEqual(new Set(['flexible', 'rigid', 'folding']))
  const technologies = records.map((record) => record.cells.technology)
  expect(technologies).toEqual(expect.arrayContaining(['mono', 'perc', 'back-contact', 'hjt', 'topcon', 'poly', 'cigs', 'cdte', 'a-si']))
  expect(records.filter((record) => /in$/.test(record.size.length)).length).toBeGreaterThanOrEqual(3)
})

test('the exemplary record has every field but acceptances', () => {
  const record = parse(readFileSync(`${folder}/tern-110.panel.yaml`, 'utf8'))
  expect(missing(schemas.panel as FieldInfo, record, '')).toEqual(['/accepted'])
})

function missing(info: FieldInfo, value: unknown, pointer: string): string[] {
  if (value === undefined) return [pointer]
  const inner = Array.isArray(value) ? value[0] : value
  const fields = info.type === 'list' ? info.item?.fields : info.fields
  return (fields ?? []).flatMap((field) => missing(field, (inner as Record<string, unknown>)[field.key], `${pointer}/${field.key}`))
}
