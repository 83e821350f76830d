// Prints every published check: what, source, our value, theirs, difference. Fails where a difference is larger than allowed.
import { load } from './load.mjs'

const { allChecks } = await load(`export { allChecks } from './test/published/all.checks.ts'`)

const figure = (x) =>
  x !== 0 && (Math.abs(x) < 1e-3 || Math.abs(x) >= 1e6) ? x.toExponential(6) : String(Number(x.toPrecision(10)))
const rows = [...allChecks]
  .sort((a, b) => (a.source < b.source ? -1 : a.source > b.source ? 1 : 0))
  .map(({ check, source, ours, theirs, within }) => {
    const fits = Math.abs(ours - theirs) <= within
    return {
      cells: [check, source, figure(ours), figure(theirs), (ours - theirs).toExponential(1), within.toExponential(1)],
      fits,
    }
  })
const head = ['check', 'source', 'ours', 'theirs', 'difference', 'allowed']
const line = (cells) => `| ${cells.join(' | ')} |`
console.log(line(head))
console.log(line(head.map(() => '---')))
for (const { cells, fits } of rows) console.log(line(cells) + (fits ? '' : ' outside'))
const outside = rows.filter(({ fits }) => !fits).length
console.log(`\n${rows.length} checks, ${outside} outside`)
if (outside > 0) process.exitCode = 1
