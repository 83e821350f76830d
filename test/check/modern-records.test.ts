import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { today } from './checked.ts'

const records = readFileSync(new URL('modern-records.yaml', import.meta.url), 'utf8')
  .split(/^---\n/m)
  .map((text) => ({ name: /^name: (.+)$/m.exec(text)![1]!, text: `format: 1\n${text}` }))

test('there are 25 of them', () => expect(records).toHaveLength(25))

test.each(records)('$name is right, and nothing warns about it alone', ({ text }) => {
  expect(seriousFindings([text])).toEqual([])
})

test('nothing warns about them in one library', () => {
  expect(seriousFindings(records.map(({ text }) => text))).toEqual([])
})

function seriousFindings(texts: readonly string[]) {
  const library = createLibrary()
  texts.forEach((text, i) => library.put(`modern-${i}.panel.yaml`, text))
  return texts.flatMap((_, i) =>
    checkFile(library, `modern-${i}.panel.yaml`, { today })!
      .findings.filter(({ severity }) => severity === 'error' || severity === 'warning')
      .map(({ rule, message }) => `${rule}: ${message}`),
  )
}
