// How the checker fares where the open ratings do not reach: each record alone, few fields, invented flexible panels, mistakes
// of several fields and of reading, clones, two mistakes at once. `npm run bed` prints all; `npm run bed -- flexible clones` some;
// `--each N` plants N of each kind, `--show KIND` prints what is said of it, `--seed N` draws others.
import { parseArgs } from 'node:util'
import { cpuSince, checker } from './bed/checker.mjs'
import { groupOf, readRatings } from './calibrate/ratings.mjs'
import { learnt } from './bed/learnt.mjs'
import { load } from './load.mjs'

const { values: options, positionals: chosen } = parseArgs({
  options: {
    each: { type: 'string', default: '40' },
    show: { type: 'string' },
    seed: { type: 'string', default: '5' },
  },
  allowPositionals: true,
})
const [each, seed] = [Number(options.each), Number(options.seed)]
/** Each kind has rows of its own, so that a few odd rows do not move all of them. */
const seedOf = (place) => seed + 1009 * place
const { halves, kinds, unforeseen, mistakes, printed, yamlOf, flexibles, unplanned, unplannedOf } = await load(
  ['mistakes', 'rows', 'flexible', 'unplanned'].map((name) => `export * from './test/slips/${name}.ts'`).join('\n'),
)
const program = `
  export { createLibrary } from './server/src/library/create.ts'
  export { checkFile } from './server/src/check/check.ts'
  export { readFile } from './server/src/records/read.ts'
  export { applyEdits } from './server/src/text/span.ts'`
const rows = readRatings('test/published/data/modules-open.csv').filter(groupOf)
const [first, unseen] = halves(rows)
// glass is checked by what the other half taught, flexible panels by the published calibration
const ofGlass = checker(await load(program, await learnt(first)))
const ofFlexible = checker(await load(program))
const glass = unseen.map((row) => ({ ...row, surface: 'glass', weight_kg: Number((11.3 * areaOf(row)).toFixed(1)) }))
const flexible = flexibles(500, seed)
const heldOut = flexibles(500, seed + 1000, 'laid out')
const isRequired = (pointer) => /^\/(stc|size)\//.test(pointer) && pointer !== '/stc/efficiency'
const fewest = (texts) => Object.fromEntries(Object.entries(texts).filter(([pointer]) => isRequired(pointer)))
const all = (texts) => texts
const without = (some) => some.map((row) => ({ ...row, efficiency_pct: null }))
// sheets print up to 1.5 times what the outline gives
const withCells = (some) =>
  some.map((row) => ({
    ...row,
    efficiency_pct: Math.min(row.efficiency_of_cells_pct, (0.15 * row.pmax_w) / areaOf(row)),
  }))

const sets = {
  alone: () => planned('each record alone', ofGlass, unseen, all, kinds),
  few: () => planned('required fields only', ofGlass, unseen, fewest, kinds),
  flexible: () => planned('flexible', ofFlexible, without(flexible), all, kinds),
  'flexible-outline': () => planned('flexible, efficiency of the outline', ofFlexible, flexible, all, kinds),
  'flexible-cells': () => planned('flexible, efficiency of the cells', ofFlexible, withCells(flexible), all, kinds),
  'flexible-few': () => planned('flexible, required fields only', ofFlexible, flexible, fewest, kinds),
  'held-out': () => planned('flexible, laid out', ofFlexible, without(heldOut), all, kinds),
  'held-out-cells': () =>
    planned('flexible, laid out, efficiency of the cells', ofFlexible, withCells(heldOut), all, kinds),
  unforeseen: () => planned('not given any of these', ofFlexible, flexible, all, unforeseen),
  unplanned: () => others('unplanned, glass', ofGlass, glass),
  'unplanned-flexible': () => others('unplanned, flexible', ofFlexible, flexible),
  'unplanned-held-out': () => others('unplanned, flexible, laid out', ofFlexible, heldOut),
  clones: () => clones(),
  two: () => two('two mistakes, glass', ofGlass, unseen),
  'two-flexible': () => two('two mistakes, flexible', ofFlexible, flexible),
}
for (const name of chosen.length > 0 ? chosen : Object.keys(sets)) sets[name]()

function planned(title, checking, some, change, which) {
  const table = tableOf()
  which.forEach((kind, place) => {
    for (const { row, texts, pointers } of mistakes(some, kind, each, seedOf(place))) {
      const clean = change(printed(row))
      const typed = { ...clean }
      for (const pointer of pointers) if (pointer in clean) typed[pointer] = texts[pointer]
      const left = pointers.filter((pointer) => typed[pointer] !== clean[pointer])
      if (left.length > 0)
        table.add(kind, checking.one(yamlOf(row, typed), yamlOf(row, clean), left), () => [clean, typed])
    }
  })
  table.print(title)
  const before = process.cpuUsage()
  const found = some.map((row) => [row, checking.seriousIn(yamlOf(row, change(printed(row))))])
  const cpu = cpuSince(before) / some.length
  const alarms = found.filter(([, { length }]) => length > 0)
  console.log(
    `alarms: ${alarms.length} of ${some.length}, ${percent(alarms.length, some.length)} %; ${cpu.toFixed(2)} ms a clean record`,
  )
  const rules = alarms.map(([row, [{ rule }]]) => `${row.sort} ${rule}`)
  for (const rule of new Set(rules)) console.log(`  ${rules.filter((one) => one === rule).length} ${rule}`)
  if (options.show === 'alarms')
    for (const [row, [{ message }]] of alarms)
      console.log(`${JSON.stringify(change(printed(row)))}\n  ${row.sort}: ${message}`)
}

function others(title, checking, some) {
  const table = tableOf()
  Object.keys(unplanned).forEach((kind, place) => {
    for (const { row, clean, texts, pointers } of unplannedOf(some, kind, each, seedOf(place)))
      table.add(
        kind,
        checking.one(yamlOf(row, texts), yamlOf(row, clean), pointers, { coarse: coarseIn(kind, texts, pointers) }),
        () => [clean, texts],
      )
  })
  table.print(title)
}

/** What was converted to another unit and rounded there is no sharper than its digits. */
function coarseIn(kind, texts, pointers) {
  if (!/°F|lb|oz|per cell/.test(kind)) return {}
  const share = (text) => (0.5 * 10 ** -(/[.](\d+)/.exec(text)?.[1].length ?? 0)) / Math.abs(parseFloat(text))
  return Object.fromEntries(pointers.map((pointer) => [pointer, 2 * share(texts[pointer])]))
}

/** A sibling's record in which all was typed anew but one field. */
function clones() {
  const table = tableOf()
  const families = new Map()
  for (const row of unseen) if (row.family) families.set(row.family, [...(families.get(row.family) ?? []), row])
  let made = 0
  for (const [, kin] of families) {
    const [a, b] = kin.filter((row) => row.pmax_w !== kin[0].pmax_w || row === kin[0])
    if (!a || !b || Math.abs(b.pmax_w / a.pmax_w - 1) > 0.3) continue
    const [from, clean] = [printed(a), printed(b)]
    for (const pointer of Object.keys(clean)) {
      const near = Math.abs(parseFloat(from[pointer]) / parseFloat(clean[pointer]) - 1)
      if (!(near > 0.01) || made++ % 3) continue
      const typed = { ...clean, [pointer]: from[pointer] }
      const beside = [yamlOf(a, from)]
      table.add(pointer, ofGlass.one(yamlOf(b, typed), yamlOf(b, clean), [pointer], { beside }), () => [clean, typed])
    }
  }
  table.print('clones with one field left')
}

function two(title, checking, some) {
  const ends = {}
  const causes = {}
  const made = kinds.flatMap((kind, place) => mistakes(some, kind, Math.max(4, each / 4), seedOf(place)))
  made.forEach(({ row, texts, pointers }, i) => {
    const second = mistakes([row], kinds[(7 * i + 3) % kinds.length], 1, seed + i)[0]
    if (!second || second.pointers.some((pointer) => pointers.includes(pointer))) return
    const clean = printed(row)
    const both = { ...texts }
    for (const pointer of second.pointers) both[pointer] = second.texts[pointer]
    const { end, steps, left, text } = checking.untilQuiet(yamlOf(row, both), yamlOf(row, clean))
    ends[end] = (ends[end] ?? 0) + 1
    if (end !== 'quiet but wrong') return
    const cause = causeOf(checking, row, { clean, both, left, text })
    causes[cause] = (causes[cause] ?? 0) + 1
    if (options.show === end || options.show === cause) show(clean, both, steps, `${cause}, wrong ${left.join(' ')}`)
  })
  const n = Object.values(ends).reduce((a, b) => a + b, 0)
  const shares = (counts) => Object.entries(counts).map(([what, count]) => `${what} ${percent(count, n)} %`)
  console.log(`\n${title}: ${shares(ends).join(', ')} of ${n}`)
  console.log(`  ${shares(causes).join(', ')}`)
}

/** Why a record is quiet though wrong: by its worst part. */
function causeOf(checking, row, { clean, both, left, text }) {
  const end = checking.valuesOf(text)
  const typed = checking.valuesOf(yamlOf(row, both))
  if (left.some((pointer) => both[pointer] === clean[pointer])) return 'an innocent field changed'
  if (left.some((pointer) => end.get(pointer) !== typed.get(pointer))) return 'a mistake replaced by another'
  const alone = { ...clean }
  for (const pointer of left) alone[pointer] = both[pointer]
  const isSeen = checking.seriousIn(yamlOf(row, alone)).length > 0
  return isSeen ? 'a mistake that would be seen alone' : 'a mistake that nothing shows'
}

function tableOf() {
  const of = new Map()
  return {
    add(kind, result, texts) {
      for (const key of [kind, 'all']) {
        const sum = of.get(key) ?? { n: 0, caught: 0, placed: 0, fixed: 0, wrong: 0, cpu: 0 }
        of.set(key, sum)
        sum.n++
        for (const what of ['caught', 'placed', 'fixed', 'wrong', 'cpu']) sum[what] += Number(result[what])
      }
      const fails = options.show === kind && !result.fixed
      if (fails || (options.show === 'wrong' && result.wrong)) show(...texts(), result.fresh, kind)
    },
    print(title) {
      console.log(`\n${title.padEnd(46)}     n  caught  placed   fixed   wrong      ms`)
      const all = of.get('all')
      of.delete('all')
      for (const [kind, { n, cpu, caught, wrong, ...rest }] of [...of, ['all', all]]) {
        const shares = [percent(caught, n), percent(rest.placed, n), percent(rest.fixed, n), percent(wrong, caught)]
        console.log(
          kind.padEnd(46),
          String(n).padStart(5),
          shares.map((one) => one.padStart(7)).join(' '),
          (cpu / n).toFixed(2).padStart(7),
        )
      }
    },
  }
}

function show(clean, typed, found, kind = '') {
  const changed = Object.keys(typed).filter((pointer) => typed[pointer] !== clean[pointer])
  console.log(`${kind}: ${changed.map((pointer) => `${pointer} ${clean[pointer]} -> ${typed[pointer]}`).join('; ')}`)
  console.log(`   ${JSON.stringify(clean)}`)
  for (const { message, corrections } of found)
    console.log(
      `   ${message} [${corrections.map(({ pointer, text, also }) => `${pointer} ${text}${also ? ` ${JSON.stringify(also)}` : ''}`).join(' | ')}]`,
    )
}

function areaOf({ length_mm, width_mm, area_m2 }) {
  return length_mm && width_mm ? (length_mm * width_mm) / 1e6 : area_m2
}

function percent(part, whole) {
  return ((100 * part) / whole).toFixed(1)
}
