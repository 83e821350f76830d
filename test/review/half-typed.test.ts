// A complete system that lacks fields in many ways at once, as while it is typed: nothing breaks, and nobody reads of a value that is not there.
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { parse } from 'yaml'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { reportOf } from '../../server/src/terminal/file-report.ts'
import { reviewText } from '../../server/src/terminal/formats/review-text.ts'

type Json = null | string | number | boolean | Json[] | { [key: string]: Json }
type Group = { [key: string]: Json }

const whole = parse(readFileSync('test/review/kept/complete.system.yaml', 'utf8')) as Json
const always = ['format', 'id', 'name', 'panels', 'arrays']

/** Paths of all groups of fields. */
function groupsOf(value: Json, path: readonly (string | number)[] = []): readonly (readonly (string | number)[])[] {
  if (Array.isArray(value)) return value.flatMap((one, i) => groupsOf(one, [...path, i]))
  if (value === null || typeof value !== 'object') return []
  return [path, ...Object.entries(value).flatMap(([key, one]) => groupsOf(one, [...path, key]))]
}

/** A year takes most of the time. */
const withoutClimate = structuredClone(whole) as { site: Group }
delete withoutClimate.site['climate']

const fieldsOf = (group: Group) => Object.keys(group).filter((key) => !always.includes(key))

function changed(from: Json, path: readonly (string | number)[], change: (group: Group) => void): Json {
  const copy = structuredClone(from)
  change(path.reduce<Json>((one, key) => (one as never)[key], copy) as Group)
  return copy
}

const drop = (keys: readonly string[]) => (group: Group) => keys.forEach((key) => delete group[key])

/** Every group with none of its fields, in a place with a climate, and with each alone, in one without. */
const ways = groupsOf(whole).flatMap((path) => {
  const fields = fieldsOf(path.reduce<Json>((one, key) => (one as never)[key], whole) as Group)
  if (fields.length < 2) return []
  const name = (keys: readonly string[]) => `/${path.join('/')} without ${keys.join(', ')}`
  const none = { name: name(fields), json: changed(whole, path, drop(fields)) }
  if (path.includes('climate')) return [none]
  const each = fields.map((kept) => fields.filter((one) => one !== kept))
  return [none, ...each.map((keys) => ({ name: name(keys), json: changed(withoutClimate as never, path, drop(keys)) }))]
})
const portion = 12
const portions = Array.from({ length: Math.ceil(ways.length / portion) }, (_, i) =>
  ways.slice(portion * i, portion * (i + 1)),
)

const notThere = /\b(?:NaN|undefined|Infinity)\b|\[object/

test.each(portions.map((group, i) => [i + 1, group] as const))('fields left out together, %s', (_, group) => {
  const wrong = group.flatMap(({ name, json }) =>
    wrongIn(JSON.stringify(json, null, 2)).map((line) => `${name}: ${line}`),
  )
  expect(wrong).toEqual([])
})

function wrongIn(text: string): readonly string[] {
  const library = createLibrary()
  library.put('wattproof.yaml', 'format: 1\ncurrency: USD\n')
  library.put('it.system.json', text)
  const checked = checkFile(library, 'it.system.json', { today: '2026-11-25', years: 1 })!
  const broken = checked.findings.filter(({ rule }) => rule === 'internal-error').map(({ message }) => message)
  const said = checked.findings.flatMap(({ message, corrections, related }) => [
    message,
    ...corrections.flatMap(({ text, why }) => [text, why]),
    ...related.map((one) => one.message),
  ])
  const shown = checked
    .values()
    .flatMap(({ text, formula, inputs }) => [text, formula, ...inputs.map((one) => one.text)])
  const page = reviewText(checked.review!, reportOf(library, checked, ''), { colour: false }).split('\n')
  return [
    ...broken,
    ...[...said, ...shown].filter((line) => /\bnull\b/.test(line)),
    ...[...said, ...shown, ...page].filter((line) => notThere.test(line)),
  ]
}
