// temporary exploration
import { writeFileSync } from 'node:fs'
import { groupOf, readRatings } from './calibrate/ratings.mjs'
import { learnt } from './bed/learnt.mjs'
import { load } from './load.mjs'
const [out, each, ...seeds] = process.argv.slice(2)
const { halves, kinds, mistakes, printed, yamlOf, flexibles, unplanned, unplannedOf } = await load(
  ['mistakes', 'rows', 'flexible', 'unplanned'].map((name) => `export * from './test/slips/${name}.ts'`).join('\n'),
)
const program = `
  export { readFile } from './server/src/records/read.ts'
  export { evidenceOf } from './server/src/check/evidence.ts'
  export { search, findSlip } from './server/src/slips/find-slip.ts'
  export { decide } from './server/src/slips/decide.ts'
  export { pointers } from './server/src/slips/evidence.ts'
  export { calibration } from './server/src/slips/model/calibration.generated.ts'`
const rows = readRatings('test/published/data/modules-open.csv').filter(groupOf)
const [first, unseen] = halves(rows)
const G = await load(program, await learnt(first))
const F = await load(program)
const lines = []
const evOf = (P, text) => P.evidenceOf(P.readFile('it.panel.yaml', text))
function one(P, set, kind, typed, clean, pointers) {
  const ev = evOf(P, typed), truth = evOf(P, clean)
  const { tried } = P.search(ev, null, P.calibration)
  const sum = tried.reduce((s, { score }) => s + Math.exp(Math.min(score, 100)), 0)
  const odds = tried.length ? Math.log(sum) : -99
  const bigOdds = tried.length ? Math.max(...tried.map(t=>t.score)) : -99
  const wrongWith = (c, most) => {
    const vals = {}
    for (const p of P.pointers) vals[p] = ev.readings[p]?.value
    c.fields.forEach((f, i) => (vals[P.pointers[f]] = c.values[i]))
    return P.pointers.filter((p) => truth.readings[p] && !(Math.abs(vals[p] / truth.readings[p].value - 1) <= most))
  }
  const top = [...tried].sort((a, b) => b.score - a.score).slice(0, 8).map(({ candidate: c, score }) => ({
    f: c.fields, t: c.texts, s: +(score).toFixed(2), why: JSON.stringify(c.why).slice(0,60), ok3: !wrongWith(c, 0.003).length, ok10: !wrongWith(c, 0.01).filter(p=>c.fields.some(f=>P.pointers[f]===p)).length }))
  const v = tried.length ? P.decide(ev, tried, null) : {kind:'consistent'}
  lines.push({ set, kind, odds: +Math.max(odds,bigOdds).toFixed(2), top, v: v.kind, cert: v.certainty, rival: v.rival?.text, first: v.text, pointers,
    typed: pointers.map(p => `${p} ${truth.readings[p]?.text} -> ${ev.readings[p]?.text}`) })
}
const all = (t) => t
for (const seed of seeds.map(Number)) {
  const flexible = flexibles(500, seed), held = flexibles(500, seed + 1000, 'laid out')
  const without = (some) => some.map((row) => ({ ...row, efficiency_pct: null }))
  for (const [set, P, some] of [['alone', G, unseen], ['flexible', F, without(flexible)], ['held', F, without(held)]]) {
    for (const kind of kinds) for (const { row, texts, pointers } of mistakes(some, kind, +each, seed))
      one(P, set, kind, yamlOf(row, texts), yamlOf(row, printed(row)), pointers)
    for (const row of some) { if (set==='alone' && seed!==+seeds[0]) continue; const c = yamlOf(row, printed(row)); one(P, set, 'clean', c, c, []) }
  }
  const glass = unseen.map((row) => ({ ...row, surface: 'glass', weight_kg: row.length_mm ? Number((11.3 * row.length_mm*row.width_mm/1e6).toFixed(1)) : null }))
  for (const [set, P, some] of [['unplanned', G, glass], ['unplanned-flexible', F, flexible]])
    for (const kind of Object.keys(unplanned)) for (const { row, clean, texts, pointers } of unplannedOf(some, kind, Math.ceil(each/4), seed))
      one(P, set, kind, yamlOf(row, texts), yamlOf(row, clean), pointers)
}
writeFileSync(out, lines.map((l) => JSON.stringify(l)).join('\n'))
