// What changes in what is said of a system when one field is left out, kept as in kept.test.ts.
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { createLibrary } from '../../../server/src/library/create.ts'
import { inLines } from './in-lines.ts'
import { recordsOfCrowded } from './records-of-crowded.ts'

const read = (name: string) => readFileSync(new URL(name, import.meta.url), 'utf8')

function said(name: string, text: string, others: Readonly<Record<string, string>>): readonly string[] {
  const library = createLibrary()
  library.put('wattproof.yaml', 'format: 1\ncurrency: USD\n')
  for (const [path, record] of Object.entries(others)) library.put(path, record)
  library.put(`${name}.system.yaml`, text)
  return inLines(library, `${name}.system.yaml`, true).filter((line) => !isOfHours.test(line))
}

/** What changes with almost any field, or says the same again. */
const isOfHours = /^[/](review[/](months|year)|pictures[/](charge|plans)|form|page[/](parts|measured))/

/** Each field that is one text, with the record without it: `  vmp: 18.6 V` alone, or between braces. */
const fieldsOf = (whole: string) =>
  [...whole.matchAll(/(?<=[{,] |^ *)(?!format|kind|id|name)[a-z_]+: (?:\[[^\]{]*\]|[^\n,{}[\]]+)/gm)].map(
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

const climate =
  'climate: { latitude: 43.5 deg, sun: [1.6, 2.5, 3.9, 4.8, 5.7, 6.2, 6.1, 5.4, 4.3, 2.8, 1.8, 1.4], air: { mean_high: [12, 13, 15, 17, 20, 23, 25, 26, 24, 20, 15, 12], mean_low: [5, 5, 7, 9, 12, 15, 17, 17, 15, 12, 8, 5] } }'

const systems = [
  { name: 'complete', folder: 'without', others: {}, every: 1 },
  // each of its many fixes is tried before it is offered, so a third of its fields has to do
  { name: 'crowded', folder: 'without/crowded', others: recordsOfCrowded, every: 3 },
].map((one) => {
  const whole = read(`${one.name}.system.yaml`)
  return { ...one, whole, usual: said(one.name, whole, one.others) }
})

test.each(
  systems.flatMap(({ whole, ...system }) => {
    const fields = fieldsOf(whole).filter((_, i) => i % system.every === 0)
    const groups = Array.from({ length: Math.ceil(fields.length / 5) }, (_, i) => fields.slice(5 * i, 5 * i + 5))
    return groups.map((group, i) => [system.name, i + 1, group, system] as const)
  }),
)('what fields of the %s system leave out, %s', async (name, n, group, { folder, usual, others }) => {
  const lines = group.flatMap(({ name: left, without }) => {
    const now = said(name, without, others)
    return [
      `# ${left}`,
      ...usual.filter((line) => !now.includes(line)).map((line) => `- ${line}`),
      ...now.filter((line) => !usual.includes(line)).map((line) => `+ ${line}`),
    ]
  })
  expect(lines.filter((line) => line.includes('internal-error'))).toEqual([])
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`${folder}/${n}.txt`)
})

test.each(systems)('the $name system itself', async ({ folder, usual }) => {
  await expect(`${usual.join('\n')}\n`).toMatchFileSnapshot(`${folder}/whole.txt`)
})

test('the crowded system with a climate', async () => {
  const { name, whole, folder, others } = systems[1]!
  const sunny = whole.replace(/site: \{ latitude: \d+ deg/, `site: { ${climate}`)
  await expect(`${said(name, sunny, others).join('\n')}\n`).toMatchFileSnapshot(`${folder}/sunny.txt`)
})
