// How many planted mistakes the checker sees on product families that its calibration has never seen: each half of the open
// ratings is checked by what was learnt from the other. `npm run halves` prints a table of both.
import { learnt } from './bed/learnt.mjs'
import { groupOf, readRatings } from './calibrate/ratings.mjs'
import { load } from './load.mjs'

const each = 200
const { halves, kinds, unforeseen, mistakes, printed, yamlOf } = await load(
  `export * from './test/slips/mistakes.ts'; export * from './test/slips/rows.ts'`,
)
const rows = readRatings('test/published/data/modules-open.csv').filter(groupOf)
const sides = halves(rows)
const results = [await evaluate(sides[0], sides[1]), await evaluate(sides[1], sides[0])]

const percent = (part, whole) => ((100 * part) / whole).toFixed(1).padStart(6)
table('kinds that the model knows, in per cent', [...kinds, 'all'])
table('kinds that it does not know', [...unforeseen, 'all that it does not know'])
for (const { alarms, clean } of results)
  console.log(`true records with a warning or an error: ${alarms} of ${clean} (${percent(alarms, clean).trim()} %)`)

function table(title, rows) {
  console.log(`${title.padEnd(44)}  first half learnt      second half learnt`)
  console.log(`${''.padEnd(44)}  caught placed fixed    caught placed fixed`)
  for (const kind of rows)
    console.log(
      kind.padEnd(44),
      ...results.map(({ of }) => {
        const { n, caught, placed, fixed } = of.get(kind)
        return ` ${[caught, placed, fixed].map((part) => percent(part, n)).join(' ')}   `
      }),
    )
  console.log()
}

async function evaluate(seen, unseen) {
  const { createLibrary, checkFile } = await load(
    `export { createLibrary } from './server/src/library/create.ts'; export { checkFile } from './server/src/check/check.ts'`,
    await learnt(seen),
  )
  const check = (texts) => {
    const library = createLibrary()
    texts.forEach((text, i) => library.put(`${i}.panel.yaml`, text))
    return texts.map((_, i) =>
      checkFile(library, `${i}.panel.yaml`, { today: '2026-01-01' }).findings.filter(isSerious),
    )
  }
  const before = new Map(check(unseen.map((row) => yamlOf(row, printed(row)))).map((found, i) => [unseen[i], found]))
  const of = new Map()
  plant(kinds, 'all')
  // a library of their own, so that they are nobody's siblings
  plant(unforeseen, 'all that it does not know')
  return { of, alarms: [...before.values()].filter(({ length }) => length > 0).length, clean: unseen.length }

  function plant(some, together) {
    for (const kind of [...some, together]) of.set(kind, { n: 0, caught: 0, placed: 0, fixed: 0 })
    const made = some.flatMap((kind) => mistakes(unseen, kind, each, 11).map((one) => ({ ...one, kind })))
    const found = check(made.map(({ row, texts }) => yamlOf(row, texts)))
    made.forEach(({ kind, row, pointers }, i) => {
      const known = new Set(before.get(row).map(({ rule, pointer }) => `${rule} ${pointer}`))
      const fresh = found[i].filter(({ rule, pointer }) => !known.has(`${rule} ${pointer}`))
      const was = printed(row)
      const first = fresh.flatMap(({ corrections }) => corrections.slice(0, 1))
      for (const sum of [of.get(kind), of.get(together)]) {
        sum.n++
        sum.caught += fresh.length > 0
        sum.placed += fresh.some(({ pointer }) => pointers.includes(pointer))
        sum.fixed += first.some(({ pointer, text }) => pointers.includes(pointer) && isSame(text, was[pointer]))
      }
    })
  }
}

/** The same text, or the same length in inches to the last digit that is offered. */
function isSame(text, was) {
  const [, inches, decimals = ''] = /^(\d+(?:[.](\d+))?) in$/.exec(text) ?? []
  const off = was.endsWith(' mm') ? Math.abs(parseFloat(was) / 25.4 - Number(inches)) : Infinity
  return text === was || off <= 0.5001 * 10 ** -decimals.length
}

function isSerious({ severity }) {
  return severity === 'error' || severity === 'warning'
}
