// temporary: reliability of certainty
import { load } from './load.mjs'
import { learnt } from './learnt.mjs'
import { groupOf, readRatings } from '../calibrate/ratings.mjs'
const t = await load(
  ['mistakes', 'rows', 'flexible', 'unplanned'].map((n) => `export * from './test/slips/${n}.ts'`).join('\n'),
)
const src = `export { readFile } from './server/src/records/read.ts'; export { evidenceOf } from './server/src/check/evidence.ts'; export { findSlip } from './server/src/slips/find-slip.ts'; export {inWords} from './server/src/findings/words.ts'; export {reasons} from './server/src/slips/typos/reasons.ts'`
const rows = readRatings('test/published/data/modules-open.csv').filter(groupOf)
const [first, unseen] = t.halves(rows)
const g = await load(src, await learnt(first)),
  f = await load(src)
const plain = ({ '/stc/efficiency': _, ...x }) => x,
  same = (x) => x
const cells = (x, row) => ({
  ...x,
  '/stc/efficiency': `${Math.min(row.efficiency_of_cells_pct, 1.5 * parseFloat(x['/stc/efficiency'])).toFixed(1)} %`,
})
const flex = t.flexibles(500, 5)
const each = Number(process.argv[2] ?? 30)
for (const [name, m, some, change] of [
  ['glass', g, unseen, same],
  ['flex', f, flex.map((r) => ({ ...r, efficiency_pct: null })), same],
  [
    'flex-cells',
    f,
    flex.map((r) => ({ ...r, efficiency_pct: Math.min(r.efficiency_of_cells_pct, (0.15 * r.pmax_w) / r.area_m2) })),
    same,
  ],
]) {
  const bins = {},
    whys = {},
    fields = {}
  for (const kind of t.kinds)
    for (const { row, texts, pointers } of t.mistakes(some, kind, each, 5)) {
      const clean = change(t.printed(row), row),
        typed = { ...clean }
      for (const p of pointers) if (p in clean) typed[p] = texts[p]
      const left = pointers.filter((p) => typed[p] !== clean[p])
      if (!left.length) continue
      const v = m.findSlip(m.evidenceOf(m.readFile('a.panel.yaml', t.yamlOf(row, typed))))
      if (v.kind !== 'slip') {
        const k = v.kind
        ;(bins[k] ??= [0, 0])[0]++
        continue
      }
      const set = [[v.pointer, v.text], ...(v.also ?? []).map((a) => [a.pointer, a.text])]
      const wrong = set.some(
        ([p, x]) =>
          !(Math.abs(parseFloat(x) / parseFloat(clean[p]) - 1) < 0.01) || x.split(' ')[1] !== clean[p].split(' ')[1],
      )
      const b = (Math.floor(v.certainty * 10) / 10).toFixed(1)
      ;(bins[b] ??= [0, 0])[wrong ? 1 : 0]++
      const why = m.inWords(v.why, m.reasons)
      ;(whys[why] ??= [0, 0])[wrong ? 1 : 0]++
      ;(fields[v.pointer] ??= [0, 0])[wrong ? 1 : 0]++
    }
  console.log(name, 'certainty: right wrong')
  for (const b of Object.keys(bins).sort()) console.log('  ', b, ...bins[b])
  for (const [w, x] of Object.entries(whys).filter(([, x]) => x[1])) console.log('      ', w, ...x)
  for (const [w, x] of Object.entries(fields).filter(([, x]) => x[1])) console.log('      ', w, ...x)
}
