// Shows how the slip search came to its verdict on a panel record: `npm run slip-terms -- FILE [SIBLING...]`. The terms are
// those of server/src/slips/README.md, in natural logarithms.
import { readFileSync } from 'node:fs'
import { load } from './load.mjs'

const [path, ...siblings] = process.argv.slice(2)
if (!path) throw new Error('npm run slip-terms -- FILE [SIBLING...]: name a panel record')
const source = {
  'server/src/records/read': 'readFile',
  'server/src/check/panel-note': 'evidenceOf, noteOf',
  'server/src/slips/find-slip': 'findSlip',
  'server/src/slips/family/family': 'familyOf',
  'test/slips/terms': 'termsOf',
}
const contents = Object.entries(source).map(([from, names]) => `export { ${names} } from './${from}.ts'`)
const slips = await load(contents.join('\n'))
const read = (file) => slips.evidenceOf(slips.noteOf(slips.readFile(file, readFileSync(file, 'utf8'))))

const evidence = read(path)
const family = slips.familyOf(evidence, siblings.map(read))
const { gains, typed, tried } = slips.termsOf(evidence, family, 12)
const figure = (x) => x.toFixed(2).padStart(8)

console.log(`${family ? family.siblings.length : 0} siblings`)
console.log('\nfields that another value could make likelier, and by how much at most')
for (const [name, gain] of gains) console.log(`${figure(gain)}  ${name}`)
console.log('\n    core arithm.    shape   family    whole    prior    score')
for (const { core, arithmetic, shape, family: ofFamily, whole, prior, score, what } of [
  { ...typed, prior: 0, score: 0, what: 'as typed' },
  ...tried,
])
  console.log([core, arithmetic, shape, ofFamily, whole, prior, score].map(figure).join(' '), ` ${what}`)
const { kind, odds } = slips.findSlip(evidence, family)
console.log(`\nverdict: ${kind}${odds === undefined ? '' : `, odds ${odds.toFixed(2)}`}`)
