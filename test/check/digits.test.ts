import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { reviewOf } from '../../server/src/check/review.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { reviewRules } from '../../server/src/review/rules/index.generated.ts'
import { systemValues } from '../../server/src/review/system-values.ts'
import { examples } from '../rules/fixtures.ts'

/** Every message of every example of a rule and of every sample, with the text of all its records. */
function* messages(): Generator<{ rule: string; message: string; typed: string }> {
  const today = '2026-11-25'
  for (const { kind, yaml } of examples) {
    const library = createLibrary()
    yaml.split(/^---\n/m).forEach((text, i) => library.put(`${i ? `other-${i}.panel` : `example.${kind}`}.yaml`, text))
    const { findings } = checkFile(library, `example.${kind}.yaml`, { today })!
    for (const { rule, message } of findings) yield { rule, message, typed: yaml }
  }
  const samples = filesOf('samples')
  const typed = samples.map(({ text }) => text).join('\n')
  const library = createLibrary()
  for (const { path, text } of samples) library.put(path, text)
  for (const { path } of samples)
    for (const { rule, message } of checkFile(library, path, { today })?.findings ?? []) yield { rule, message, typed }
}

function filesOf(folder: string): { path: string; text: string }[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name)
    if (statSync(path).isDirectory()) return filesOf(path)
    return path.endsWith('.yaml') ? [{ path, text: readFileSync(path, 'utf8') }] : []
  })
}

const digitsOf = (number: string) =>
  number
    .replace('.', '')
    .replace(/^0+/, '')
    .replace(number.includes('.') ? '' : /0+$/, '').length

const ofReview = new Set<string>(reviewRules.map(({ id }) => id))

test('no message has a share of a system, or days, with more than two digits, or any computed decimal with more than four', () => {
  const tooMany: string[] = []
  for (const { rule, message, typed } of messages())
    for (const [, number, unit] of message.matchAll(/(?<![\w.])(\d+(?:\.\d+)?)(?: (%|days?\b|nights?\b))?/g)) {
      if (typed.includes(number!)) continue
      const most = ofReview.has(rule) && unit ? 2 : number!.includes('.') ? 4 : Infinity
      if (digitsOf(number!) > most) tooMany.push(`${rule}: ${number} ${unit ?? ''} in ${message}`)
    }
  expect(tooMany).toEqual([])
})

test('nor has a value of a system', () => {
  const samples = filesOf('samples/systems')
  const library = createLibrary()
  for (const { path, text } of samples) library.put(path, text)
  const texts = samples.flatMap(({ path }) => {
    const review = path.endsWith('.system.yaml') && reviewOf(library, library.file(path)!)
    return review ? systemValues(review.system, review.figures).map(({ id, text }) => `${id}: ${text}`) : []
  })
  expect(texts.length).toBeGreaterThan(20)
  const shares = texts.filter((text) => / (?:%|days|C)$/.test(text))
  expect(shares.length).toBeGreaterThan(5)
  for (const text of shares) expect(digitsOf(/: ([\d.]+)/.exec(text)![1]!), text).toBeLessThanOrEqual(2)
})
