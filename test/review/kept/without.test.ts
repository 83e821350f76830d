// What changes in what is said of a complete system when one field is left out, kept as in kept.test.ts.
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { createLibrary } from '../../../server/src/library/create.ts'
import { inLines } from './in-lines.ts'

const whole = readFileSync(new URL('complete.system.yaml', import.meta.url), 'utf8')

function said(text: string): readonly string[] {
  const library = createLibrary()
  library.put('wattproof.yaml', 'format: 1\ncurrency: USD\n')
  library.put('complete.system.yaml', text)
  return inLines(library, 'complete.system.yaml', true).filter((line) => !isOfHours.test(line))
}

/** What changes with almost any field, or says the same again. */
const isOfHours = /^[/](review[/](months|year)|pictures[/](charge|plans)|form|page[/](parts|measured))/

/** Each field that is one text, with the record without it: `  vmp: 18.6 V` alone, or between braces. */
const fields = [...whole.matchAll(/(?<=[{,] |^ *)(?!format|kind|id|name)[a-z_]+: (?:\[[^\]{]*\]|[^\n,{}[\]]+)/gm)].map(
  ({ 0: field, index }) => {
    const [before, after] = [whole.slice(0, index), whole.slice(index + field.length)]
    const isLine = /\n *$/.test(before)
    const without = isLine
      ? before.replace(/ *$/, '') + after.replace(/^\n/, '')
      : after.startsWith(', ')
        ? before + after.slice(2)
        : before.replace(/, $/, '') + after
    const line = before.split('\n').length
    return { name: `line ${line}, ${field}`, without }
  },
)

const groups = Array.from({ length: Math.ceil(fields.length / 5) }, (_, i) => fields.slice(5 * i, 5 * i + 5))
const usual = said(whole)

test.each(groups.map((group, i) => [i + 1, group] as const))('what fields leave out, %s', async (n, group) => {
  const lines = group.flatMap(({ name, without }) => {
    const now = said(without)
    return [
      `# ${name}`,
      ...usual.filter((line) => !now.includes(line)).map((line) => `- ${line}`),
      ...now.filter((line) => !usual.includes(line)).map((line) => `+ ${line}`),
    ]
  })
  expect(lines.filter((line) => line.includes('internal-error'))).toEqual([])
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`without/${n}.txt`)
})

test('the complete system itself', async () => {
  await expect(`${usual.join('\n')}\n`).toMatchFileSnapshot('without/whole.txt')
})
