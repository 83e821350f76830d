// Shows how the slip search came to its verdict on a panel record: `npm run slip-terms -- FILE [SIBLING...]`. The terms are
// those of server/src/slips/README.md, in natural logarithms.
import { readFileSync } from 'node:fs'
import { load } from './load.mjs'

const [path, ...siblings] = process.argv.slice(2)
if (!path) throw new Error('npm run slip-terms -- FILE [SIBLING...]: name a panel record')
const source = {
  'records/read': 'readFile',
  'check/panel-note': 'evidenceOf, noteOf',
  'findings/words': 'inWords',
  'slips/evidence': 'nameOf, pointers',
  'slips/typos/reasons': 'reasons',
  'slips/find-slip': 'findSlip, search',
  'slips/family/family': 'familyOf, familyLog',
  'slips/density/arithmetic': 'identityLog, identities',
  'slips/density/shape': 'shapeLog',
  'slips/density/coherence-with': 'coherenceWith',
  'slips/model/calibration.generated': 'calibration',
}
const contents = Object.entries(source).map(([from, names]) => `export { ${names} } from './server/src/${from}.ts'`)
const slips = await load(contents.join('\n'))
const read = (file) => slips.evidenceOf(slips.noteOf(slips.readFile(file, readFileSync(file, 'utf8'))))

const evidence = read(path)
const family = slips.familyOf(evidence, siblings.map(read))
const { frame, suspects, tried } = slips.search(evidence, family, slips.calibration)
const none = { fields: [], values: [] }
const figure = (x) => x.toFixed(2).padStart(8)
const termsOf = ({ fields, values, halves }) => {
  const v = frame.values.slice()
  const steps = frame.halves.slice()
  fields.forEach((field, i) => (v[field] = values[i]))
  halves?.forEach((half, i) => (steps[fields[i]] = half))
  const parts = slips.identities.map((_, i) => slips.identityLog(frame, i, v, steps))
  const arithmetic = parts.reduce((a, b) => a + b, 0)
  const shape = slips.shapeLog(frame, v)
  const ofFamily = family ? slips.familyLog(family, v) : 0
  const whole = slips.coherenceWith(frame, { fields, values, halves }, -Infinity)
  return [whole - arithmetic - shape - ofFamily, arithmetic, shape, ofFamily, whole]
}

console.log(`${family ? family.siblings.length : 0} siblings`)
console.log('\nfields that another value could make likelier, and by how much at most')
for (const { field, gain } of suspects) console.log(`${figure(gain)}  ${slips.nameOf(field)}`)
console.log('\n    core arithm.    shape   family    whole    prior    score')
const row = (terms, prior, score, what) => console.log([...terms, prior, score].map(figure).join(' '), ` ${what}`)
row(termsOf(none), 0, 0, 'as typed')
for (const { candidate, score } of tried.toSorted((a, b) => b.score - a.score).slice(0, 12))
  row(
    termsOf(candidate),
    candidate.prior,
    score,
    `${candidate.fields.map(slips.nameOf).join(', ')}: ${candidate.texts.join(', ') || 'unknown'} (${slips.inWords(candidate.why, slips.reasons)})`,
  )
const { kind, odds } = slips.findSlip(evidence, family)
console.log(`\nverdict: ${kind}${odds === undefined ? '' : `, odds ${odds.toFixed(2)}`}`)
