// Changes the source in small ways (mutants) and counts how many of them the tests notice: a seeded sample of 1 000 over four
// layers. Prints the figures and keeps the mutants that no test notices beside the tests. A run that was interrupted goes on
// where it stopped; without .output/mutate it begins anew.
//   npm run mutate [FOLDER...]    MUTATE_SEED and MUTATE_COUNT draw another sample
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { drawMutants } from './mutate/draw.mjs'
import { reach, tryThem } from './mutate/runs.mjs'
import { triesOf } from './mutate/tries.mjs'

const layers = ['quantities', 'physics', 'slips', 'review']
/** Tests that start no program and take no minutes, nor seconds before their first test. */
const asked = [
  ...['quantities', 'physics', 'published', 'slips', 'review', 'rules', 'systems', 'values', 'check'],
  ...['records', 'library', 'rows', 'report', 'editor'],
]
const notAsked =
  /(command|fuzz|message-lengths|repeats|statistics)[.]test[.]ts$|(check|review)[/]properties|systems[/]references/
/** A server or a browser of its own, and what stands for modules: of vitest nothing but tests and `expect` is there. */
const needsMore = /\bstartServer\b|[/]browser[.]ts|\bvi[.]hoisted/
const { MUTATE_SEED = '1', MUTATE_COUNT = '1000' } = process.env

const wanted = process.argv.length > 2 ? process.argv.slice(2) : layers
const files = wanted.flatMap((layer) => filesIn(`server/src/${layer}`, /(?<![.]generated)[.]ts$/))
const tests = asked
  .flatMap((name) => filesIn(`test/${name}`, /[.]test[.]ts$/))
  .filter((path) => !notAsked.test(path) && !needsMore.test(readFileSync(path, 'utf8')))

const folder = '.output/mutate'
for (const name of ['noticed', 'survived', 'survived-longer']) mkdirSync(`${folder}/${name}`, { recursive: true })

const { all, mutants, sources } = await drawMutants(files, Number(MUTATE_COUNT), MUTATE_SEED)
console.log(`${mutants.length} of ${all} mutants drawn`)
const reached = await reach(folder, tests, sources)
const tried = mutants.map((mutant) => ({ ...mutant, tries: triesOf(mutant, reached) }))
const before = countOf(mutants)
if (before.tried > 0) console.log(`tried before: ${inWords(before)}`)
await tryThem(folder, tried, sources)

const noticed = new Set(readdirSync(`${folder}/noticed`))
for (const layer of wanted)
  print(
    layer,
    mutants.filter(({ file }) => file.startsWith(`server/src/${layer}/`)),
  )
print('all', mutants)
writeSurvivors('test/mutation/survivors.json')

function print(name, own) {
  console.log(`${name}: ${inWords({ ...countOf(own), tried: own.length })}`)
}

/** Of the mutants at the head of the draw, as far as all are tried: they are a sample, too. */
function countOf(own) {
  const [yes, no] = ['noticed', 'survived'].map((name) => new Set(readdirSync(`${folder}/${name}`)))
  const known = ({ key }) =>
    yes.has(key) || no.has(key) || tried.some((one) => one.key === key && one.tries.length === 0)
  const end = own.findIndex((one) => !known(one))
  const some = end < 0 ? own : own.slice(0, end)
  return { tried: some.length, noticed: some.filter(({ key }) => yes.has(key)).length }
}

function inWords({ tried: all, noticed: count }) {
  return `${count} of ${all} noticed, ${((100 * count) / all).toFixed(1)} %`
}

/** What was written about a survivor stays while it survives. */
function writeSurvivors(path) {
  const before = existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : []
  const whyOf = new Map(before.map(({ key, why }) => [key, why]))
  const survivors = tried
    .filter(({ key }) => !noticed.has(key))
    .map(({ key, file, line, code, replacement, tries }) => ({
      key,
      at: `${file}:${line}`,
      code,
      replacement,
      why: whyOf.get(key) || (tries.length > 0 ? '' : 'no test that is asked reaches it'),
    }))
  survivors.sort((a, b) => a.at.localeCompare(b.at, 'en', { numeric: true }))
  writeFileSync(path, `${JSON.stringify(survivors, null, 2)}\n`)
}

function filesIn(place, pattern) {
  const names = readdirSync(place, { recursive: true }).map((name) => `${place}/${name}`)
  return names.filter((name) => pattern.test(name)).sort()
}
